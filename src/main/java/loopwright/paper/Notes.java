package loopwright.paper;

import java.util.List;

/** What stands under answers for people. */
final class Notes {

    private Notes() {}

    /** Under an answer about what fits. */
    static List<String> underFit(Origin origin) {
        return List.of(
                "Positions in mm: centre of the hole pattern, from the inside of that wall; each range holds by",
                "itself, not every pair of positions. Watts: best parts of each shape at 1300 rpm (or full speed if",
                "slower). Nominal dimensions: measure before cutting or buying.",
                "--layout KEY shows one layout in full: every gap, every place, all its sets of mods.",
                origin.line());
    }

    /** Under ranked builds. */
    static List<String> underRank(Origin origin) {
        return List.of(
                "Temperatures: an estimate from rated conductance, all heat at full load; +- is one standard",
                "deviation. It takes the fans that blow out to manage what the others draw in: check that balance.",
                "Noise: fans and pump only (the pump at 60 %); read the differences, absolute levels are weak.",
                "Dimensions are nominal: measure before cutting. Cutting, spraying, mains power and coolant can",
                "hurt: local codes, the makers' sheets and licensed practice rule.",
                origin.line());
    }

    /** Under an answer about what work unlocks. */
    static List<String> underUnlock(Origin origin) {
        return List.of(
                "Cooler or warmer: against the best as delivered; best parts of each shape at 1300 rpm; band of one",
                "standard deviation. Money: material and hands-on hours. Nominal dimensions: measure before cutting.",
                "Cutting sheet metal: all parts out first; guard eyes, hands, ears and lungs. Local codes and the",
                "makers' sheets of tools and paint come first.",
                origin.line());
    }
}

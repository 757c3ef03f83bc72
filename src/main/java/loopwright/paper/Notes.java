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
                "slower). Fits: the chance that nothing meets as it stands, each dimension off by its +- (two",
                "standard deviations where no other is said). Measure before cutting or buying.",
                "--layout KEY shows one layout in full: every gap, every place, all its sets of mods.",
                origin.line());
    }

    /** Under ranked builds. */
    static List<String> underRank(Origin origin) {
        return List.of(
                "Temperatures: steady state at full load, fans as fast as the noise limit lets them; +- is one",
                "standard deviation. A grille of small holes resists more than the formula says. Noise: fans, pump",
                "and supply; read the differences, absolute levels are weak. inspect --build KEY: one build in full.",
                "Dimensions are nominal: measure before cutting. Cutting, spraying, mains power and coolant can",
                "hurt: local codes, the makers' sheets and licensed practice rule.",
                origin.line());
    }

    /** Under a build in full. */
    static List<String> underInspect(Origin origin) {
        return List.of(
                "Steady state at full load; +- is one standard deviation, in differences with what both share",
                "counted once. Left out: warm air that a mount draws in again, tones. A grille",
                "of small holes resists more than the formula says. Steps fit but need not keep the brief's limits.",
                "Dimensions are nominal: measure before cutting. Cutting, spraying, mains power and coolant can",
                "hurt: local codes, the makers' sheets and licensed practice rule.",
                origin.line());
    }

    /** Under two builds side by side. */
    static List<String> underCompare(Origin origin) {
        return List.of(
                "Steady state at full load; +- is one standard deviation of the difference, with what both share",
                "counted once; figures without it are exact. Nominal dimensions: measure before cutting. Cutting,",
                "spraying, mains power and coolant can hurt: local codes, makers' sheets and licensed practice rule.",
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

    /** Under an answer about what to measure. */
    static List<String> underMeasure(Origin origin) {
        return List.of(
                "Regret: what a clash found after assembly costs more than one on paper, times the share of wrong",
                "decisions that the reading avoids, if one of these layouts is built, whichever. Layouts hang on a",
                "dimension when their fit changes with it alone off by its +- either way. --layout KEY: one layout.",
                "--record FILE: what has been measured. Read first, cut then.",
                origin.line());
    }
}

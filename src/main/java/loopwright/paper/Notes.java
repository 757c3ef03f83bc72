package loopwright.paper;

import java.util.List;

/** What stands under answers for people. */
final class Notes {

    private Notes() {}

    /** Under an answer about what fits. */
    static List<String> underFit(Origin origin) {
        return List.of(
                "Positions in mm: centre of the hole pattern, from the inside of that wall. Watts: best parts of each",
                "shape at 1300 rpm (or full speed if slower). Nominal dimensions: measure before cutting or buying.",
                "--layout KEY shows one layout in full: every gap, every place, all its sets of mods.",
                origin.line());
    }
}

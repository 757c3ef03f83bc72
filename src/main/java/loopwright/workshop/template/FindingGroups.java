package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.quantity.Hundredths;

/** Gathers like findings about holes into one line each: which holes, and the least metal of them. */
final class FindingGroups {

    /**
     * What a group of like findings says, but for its holes.
     *
     * @param what what the millimetres are of
     * @param wanted what they should be, or what to do
     */
    record Kind(Finding.Severity severity, String what, String wanted) {}

    private record One(String ids, double metalHmm) {}

    private final Map<Kind, List<One>> groups = new LinkedHashMap<>();

    /** Adds a hole, or a pair of holes, with the metal there. */
    void add(Kind kind, String ids, double metalHmm) {
        groups.computeIfAbsent(kind, k -> new ArrayList<>()).add(new One(ids, metalHmm));
    }

    /** One finding a kind, in the order the kinds came up. */
    List<Finding> findings() {
        List<Finding> out = new ArrayList<>();
        groups.forEach((kind, ones) -> {
            double least = ones.stream().mapToDouble(One::metalHmm).min().orElse(0);
            String ids = String.join(", ", ones.stream().map(One::ids).toList());
            out.add(new Finding(kind.severity(), ids + ": " + mm(least) + " mm " + kind.what() + "; " + kind.wanted()));
        });
        return out;
    }

    /** Millimetres, rounded down: metal is never overstated. */
    static String mm(double hmm) {
        return Hundredths.text((int) Math.floor(hmm + 1e-6));
    }
}

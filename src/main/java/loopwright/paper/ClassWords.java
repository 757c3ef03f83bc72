package loopwright.paper;

import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.catalog.basis.Pattern;

/** Radiator classes in the builder's words. */
final class ClassWords {

    private ClassWords() {}

    /** {@code 2x140x30}. */
    static String of(RadiatorClass radiator) {
        return radiator.pattern() + "x" + Mm.text(radiator.thicknessHmm());
    }

    /** {@code 1x120x30, 2x140x30/45}: thicknesses of one pattern together; "nothing" for none. */
    static String of(List<RadiatorClass> radiators) {
        if (radiators.isEmpty()) {
            return "nothing";
        }
        SortedMap<Pattern, String> byPattern = new TreeMap<>();
        for (RadiatorClass each : radiators) {
            byPattern.merge(each.pattern(), Mm.text(each.thicknessHmm()), (a, b) -> a + "/" + b);
        }
        return byPattern.entrySet().stream()
                .map(e -> e.getKey() + "x" + e.getValue())
                .collect(Collectors.joining(", "));
    }
}

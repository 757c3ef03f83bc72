package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import loopwright.fit.UnknownLayout;

/** Layouts that wait for a measurement, counted by what has to be measured. */
final class UnknownText {

    private UnknownText() {}

    static List<String> lines(List<UnknownLayout> unknown) {
        if (unknown.isEmpty()) {
            return List.of();
        }
        Map<String, Integer> counts = new TreeMap<>();
        unknown.forEach(u -> counts.merge(String.join(", ", u.measure()), 1, Integer::sum));
        List<String> out = new ArrayList<>();
        out.add("");
        out.add("Unknown: " + unknown.size() + " layouts that may fit, once these are measured:");
        counts.forEach((measure, count) -> out.addAll(Lines.wrap("   " + count + ": ", measure)));
        return out;
    }
}

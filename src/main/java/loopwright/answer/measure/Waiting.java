package loopwright.answer.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.fit.UnknownLayout;
import loopwright.quantity.Dimension;

/**
 * A length that is not known, and layouts wait for it.
 *
 * @param layouts how many
 * @param only for how many it is the only one
 * @param where it is taken
 */
public record Waiting(Measurable measurable, int layouts, int only, String where) {

    /** Those that most wait for first, then those that are the only ones for most, then by name. */
    static List<Waiting> of(List<UnknownLayout> unknown, MeasuredNames names, Whereabouts whereabouts) {
        SortedMap<Measurable, Integer> layouts = new TreeMap<>();
        SortedMap<Measurable, Integer> only = new TreeMap<>();
        for (UnknownLayout each : unknown) {
            Set<Measurable> all = new TreeSet<>();
            each.measure()
                    .forEach(n -> names.of(each.layout(), n, Dimension.UNKNOWN).ifPresent(all::add));
            all.forEach(m -> layouts.merge(m, 1, Integer::sum));
            if (all.size() == 1) {
                only.merge(all.iterator().next(), 1, Integer::sum);
            }
        }
        List<Waiting> out = new ArrayList<>();
        layouts.forEach((m, count) -> out.add(
                new Waiting(m, count, only.getOrDefault(m, 0), whereabouts.of(m).words())));
        out.sort(Comparator.comparingInt((Waiting w) -> -w.layouts())
                .thenComparingInt(w -> -w.only())
                .thenComparing(Waiting::measurable));
        return List.copyOf(out);
    }
}

package loopwright.tolerance;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.geometry.Sum;

/**
 * Those margins of a layout that are not sure, and what becomes of them when one dimension is read.
 *
 * <p>Units: hundredths of a millimetre. A margin is sure from 99.9 % on. Those that others imply are left out.
 *
 * <p>Chances here are products over the margins, and within a margin over the axes: what they share beside the dimension that is read
 * is not looked at. {@link FitProbability} does that, but takes a thousand times as long.
 */
public final class Unsure {

    /** From here on a margin is sure. */
    private static final double SURE = 0.999;

    private final List<BoxMargin> boxes;

    private Unsure(List<BoxMargin> boxes) {
        this.boxes = List.copyOf(boxes);
    }

    /** Those of several pairs; what is unknown is left out. */
    public static Unsure of(Collection<PairMargin> pairs) {
        List<BoxMargin> open = pairs.stream()
                .flatMap(p -> p.boxes().stream())
                .filter(b -> b.isKnown() && b.chance() < SURE)
                .toList();
        Map<String, Integer> least = new HashMap<>();
        for (BoxMargin box : open) {
            if (box.axes().size() == 1) {
                AxisMargin axis = box.axes().get(0);
                least.merge(axis.direction(), axis.nominalHmm(), Math::min);
            }
        }
        SortedMap<String, BoxMargin> needed = new TreeMap<>();
        for (BoxMargin box : open) {
            int slack = box.axes().size() == 1 ? 1 : 0;
            boolean implied = box.axes().stream()
                    .anyMatch(a -> a.nominalHmm() >= least.getOrDefault(a.direction(), Integer.MAX_VALUE - 1) + slack);
            if (!implied) {
                needed.put(text(box), box);
            }
        }
        return new Unsure(List.copyOf(needed.values()));
    }

    private static String text(BoxMargin box) {
        StringBuilder out = new StringBuilder();
        box.axes()
                .forEach(a -> out.append(a.nominalHmm())
                        .append('@')
                        .append(a.direction())
                        .append('|'));
        return out.toString();
    }

    /** Whether every margin is sure. */
    public boolean isNothing() {
        return boxes.isEmpty();
    }

    /** Everything by value. */
    public String text() {
        StringBuilder out = new StringBuilder();
        boxes.forEach(b -> out.append(text(b)).append('&'));
        return out.toString();
    }

    /** The dimensions in them, by name. */
    public SortedMap<String, Sum.Term> dimensions() {
        SortedMap<String, Sum.Term> out = new TreeMap<>();
        boxes.forEach(b -> b.axes().forEach(a -> a.terms().forEach(t -> out.putIfAbsent(t.name(), t))));
        return out;
    }

    /** Those with a dimension in them. */
    public Unsure about(String name) {
        return new Unsure(boxes.stream()
                .filter(b -> b.axes().stream().anyMatch(a -> a.isAbout(Set.of(name))))
                .toList());
    }

    /** Whether each is still kept at nominal when some dimensions are all so much more. */
    public boolean standsWith(Set<String> names, int moreHmm) {
        return boxes.stream()
                .filter(b -> b.axes().stream().anyMatch(a -> a.isAbout(names)))
                .allMatch(b -> b.axes().stream().anyMatch(a -> a.nominalWith(names, moreHmm) >= 0));
    }

    /** The chance that all are kept. */
    public double chance() {
        double product = 1;
        for (BoxMargin box : boxes) {
            product *= box.chance();
        }
        return product;
    }

    /** The same after a reading. */
    public double chance(ReadOff reading) {
        double product = 1;
        for (BoxMargin box : boxes) {
            double none = 1;
            for (AxisMargin axis : box.axes()) {
                none *= 1 - axis.probability(reading);
            }
            product *= 1 - none;
        }
        return product;
    }
}

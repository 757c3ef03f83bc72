package loopwright.quantity;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A union of closed integer intervals: the positions a stack may take along one axis.
 *
 * <p>Units: hundredths of a millimetre. Kept sorted; intervals that touch or overlap in the integers are merged, so
 * two equal sets are equal records.
 *
 * @param intervals disjoint, ascending, with a gap of at least one hundredth between neighbours
 */
public record IntervalSet(List<Interval> intervals) {

    /** The set without a position. */
    public static final IntervalSet EMPTY = new IntervalSet(List.of());

    /** A closed interval; {@code from <= to}. */
    public record Interval(int from, int to) {
        /** Refuses an interval that runs backwards. */
        public Interval {
            if (from > to) {
                throw new IllegalArgumentException("interval runs from " + from + " back to " + to);
            }
        }
    }

    /** Sorts and merges. */
    public IntervalSet {
        intervals = merged(intervals);
    }

    /** The set of one interval. */
    public static IntervalSet of(int from, int to) {
        return new IntervalSet(List.of(new Interval(from, to)));
    }

    private static List<Interval> merged(List<Interval> raw) {
        List<Interval> sorted = new ArrayList<>(raw);
        sorted.sort(Comparator.comparingInt(Interval::from));
        List<Interval> out = new ArrayList<>();
        for (Interval next : sorted) {
            int last = out.size() - 1;
            if (last >= 0 && next.from() <= out.get(last).to() + 1) {
                Interval grown = new Interval(
                        out.get(last).from(), Math.max(out.get(last).to(), next.to()));
                out.set(last, grown);
            } else {
                out.add(next);
            }
        }
        return List.copyOf(out);
    }

    /** Whether there is no position at all. */
    public boolean isEmpty() {
        return intervals.isEmpty();
    }

    /** Smallest position. */
    public int min() {
        return intervals.get(0).from();
    }

    /** Largest position. */
    public int max() {
        return intervals.get(intervals.size() - 1).to();
    }

    /** Whether the position is in the set. */
    public boolean contains(int position) {
        return intervals.stream().anyMatch(i -> i.from() <= position && position <= i.to());
    }

    /** The positions that are in both sets. */
    public IntervalSet and(IntervalSet other) {
        List<Interval> out = new ArrayList<>();
        for (Interval a : intervals) {
            for (Interval b : other.intervals) {
                int from = Math.max(a.from(), b.from());
                int to = Math.min(a.to(), b.to());
                if (from <= to) {
                    out.add(new Interval(from, to));
                }
            }
        }
        return new IntervalSet(out);
    }

    /** The positions that are in either set. */
    public IntervalSet or(IntervalSet other) {
        List<Interval> both = new ArrayList<>(intervals);
        both.addAll(other.intervals);
        return new IntervalSet(both);
    }
}

package loopwright.fit.conflict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Minimal hitting sets: those that share a fact with each of some sets, and of which no fact can be spared.
 *
 * <p>The minimal conflicts are exactly the minimal hitting sets of the minimal corrections, and the other way round.
 * Source: [Reiter1987].
 */
public final class HittingSets {

    private HittingSets() {}

    /**
     * Hitting sets, and whether they are all.
     *
     * @param sets smallest first
     * @param whole whether there are no others
     */
    public record Hitting(List<FactSet> sets, boolean whole) {
        /** Copies. */
        public Hitting {
            sets = List.copyOf(sets);
        }
    }

    /** Every minimal hitting set; of no sets at all it is the empty set, of the empty set there is none. */
    public static List<FactSet> all(List<FactSet> sets) {
        return upTo(sets, Integer.MAX_VALUE).sets();
    }

    /**
     * Minimal hitting sets, at most so many.
     *
     * <p>Depth first: an open set is hit by each of its facts in turn; those tried before are left out of what follows, so
     * nothing is found twice, and a branch in which some fact hits no set by itself any more is given up.
     */
    public static Hitting upTo(List<FactSet> sets, int most) {
        List<FactSet> smallFirst = new ArrayList<>(sets);
        smallFirst.sort(Comparator.naturalOrder());
        List<FactSet> out = new ArrayList<>();
        boolean whole = new Walk(smallFirst, most, out).extend(FactSet.NONE, FactSet.NONE);
        out.sort(Comparator.naturalOrder());
        return new Hitting(out, whole);
    }

    /** One depth-first walk. */
    private record Walk(List<FactSet> sets, int most, List<FactSet> out) {

        /** Goes on from facts already in, with facts that must stay out; false once there are too many. */
        boolean extend(FactSet in, FactSet outside) {
            FactSet open = FactSet.NONE;
            int fewest = Integer.MAX_VALUE;
            for (FactSet set : sets) {
                if (!set.meets(in)) {
                    FactSet left = set.minus(outside);
                    if (left.isEmpty()) {
                        return true;
                    }
                    if (left.size() < fewest) {
                        fewest = left.size();
                        open = left;
                    }
                }
            }
            if (fewest == Integer.MAX_VALUE) {
                if (out.size() == most) {
                    return false;
                }
                out.add(in);
                return true;
            }
            FactSet tried = outside;
            for (int fact : open.numbers()) {
                FactSet more = in.with(fact);
                if (noneIsSpare(more) && !extend(more, tried)) {
                    return false;
                }
                tried = tried.with(fact);
            }
            return true;
        }

        /** Whether each fact hits some set that no other one hits. */
        private boolean noneIsSpare(FactSet in) {
            for (int fact : in.numbers()) {
                FactSet others = in.without(fact);
                if (sets.stream().noneMatch(s -> s.has(fact) && !s.meets(others))) {
                    return false;
                }
            }
            return true;
        }
    }
}

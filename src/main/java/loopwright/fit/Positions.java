package loopwright.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import loopwright.quantity.IntervalSet;

/**
 * Decides exactly whether stacks can stand somewhere in their ranges, and where best.
 *
 * <p>For every pair of boxes a separating side is chosen; what remains is a set of {@code x_j − x_i ≥ c} over unions of
 * intervals, whose least fixpoint is a solution if there is one (the solutions are closed under the smaller of each
 * coordinate). Branching is over sides only, fewest sides first. Unit: hundredths of a millimetre.
 */
final class Positions {

    private final IntervalSet[] domains;
    private final List<int[]> disjunctions;
    private final List<int[]> always;
    private int margin;

    /**
     * A question about positions.
     *
     * @param domains one set a variable; the constant and the unused ones hold just 0
     * @param disjunctions what must hold, as {@link Sides} writes it
     */
    Positions(IntervalSet[] domains, List<int[]> disjunctions) {
        this(domains, disjunctions, List.of());
    }

    /**
     * A question about positions.
     *
     * @param disjunctions what must hold with the margin asked for
     * @param always what must hold as it is, whatever the margin
     */
    Positions(IntervalSet[] domains, List<int[]> disjunctions, List<int[]> always) {
        this.domains = domains.clone();
        this.disjunctions = disjunctions;
        this.always = always;
    }

    /** All that must hold; what does not go with the margin is written so that adding the margin leaves it as it is. */
    private List<int[]> asked() {
        if (always.isEmpty()) {
            return disjunctions;
        }
        List<int[]> out = new ArrayList<>(disjunctions);
        for (int[] disjunction : always) {
            int[] less = disjunction.clone();
            for (int at = 2; at < less.length; at += 3) {
                less[at] -= margin;
            }
            out.add(less);
        }
        return out;
    }

    /** What the tree search does with a way to choose every side; answers whether it has seen enough. */
    private interface Visit {
        boolean done(int[] low, int[] high);
    }

    /** Whether every margin can be at least this. */
    boolean feasible(int marginHmm) {
        margin = marginHmm;
        return search(lows(), highs(), new int[0][], asked(), (low, high) -> true);
    }

    /**
     * The largest margin within bounds that every pair can have at once.
     *
     * @param lowest a margin known to be possible
     * @param highest a margin not to look beyond
     */
    int largestMargin(int lowest, int highest) {
        int low = lowest;
        int high = highest;
        while (low < high) {
            int middle = high - (high - low) / 2;
            if (feasible(middle)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    /** The smallest positions, first variable first, at which every margin is at least this; empty if there are none. */
    Optional<int[]> least(int marginHmm) {
        margin = marginHmm;
        List<int[]> best = new ArrayList<>();
        search(lows(), highs(), new int[0][], asked(), (low, high) -> {
            if (best.isEmpty()) {
                best.add(low.clone());
            } else if (Arrays.compare(low, best.get(0)) < 0) {
                best.set(0, low.clone());
            }
            return false;
        });
        return best.stream().findFirst();
    }

    /** All values each variable can take while every margin is at least this. */
    List<IntervalSet> slides(int marginHmm) {
        margin = marginHmm;
        List<List<IntervalSet.Interval>> found = new ArrayList<>();
        for (int i = 0; i < domains.length; i++) {
            found.add(new ArrayList<>());
        }
        eachPiece(0, domains.clone(), found);
        return found.stream().map(IntervalSet::new).toList();
    }

    private void eachPiece(int variable, IntervalSet[] pieces, List<List<IntervalSet.Interval>> found) {
        if (variable == pieces.length) {
            Positions piece = new Positions(pieces, disjunctions, always);
            piece.margin = margin;
            piece.search(piece.lows(), piece.highs(), new int[0][], piece.asked(), (low, high) -> {
                for (int i = 0; i < low.length; i++) {
                    found.get(i).add(new IntervalSet.Interval(low[i], high[i]));
                }
                return false;
            });
            return;
        }
        for (IntervalSet.Interval interval : domains[variable].intervals()) {
            pieces[variable] = IntervalSet.of(interval.from(), interval.to());
            eachPiece(variable + 1, pieces, found);
        }
    }

    private int[] lows() {
        return Arrays.stream(domains).mapToInt(IntervalSet::min).toArray();
    }

    private int[] highs() {
        return Arrays.stream(domains).mapToInt(IntervalSet::max).toArray();
    }

    /** Depth-first over the open disjunctions; {@code posted} are sides already chosen. */
    private boolean search(int[] low, int[] high, int[][] posted, List<int[]> open, Visit visit) {
        List<int[]> sides = new ArrayList<>(Arrays.asList(posted));
        List<int[]> rest = open;
        while (true) {
            if (!settle(low, high, sides)) {
                return false;
            }
            List<int[]> still = new ArrayList<>();
            boolean forced = false;
            for (int[] disjunction : rest) {
                int[] left = possible(disjunction, low, high);
                if (left.length == 0) {
                    return false;
                }
                if (left.length == 3) {
                    sides.add(left);
                    forced = true;
                } else if (left.length > 3) {
                    still.add(left);
                }
                // A settled disjunction comes back as ENTAILED, one element long, and is dropped.
            }
            rest = still;
            if (!forced) {
                break;
            }
        }
        if (rest.isEmpty()) {
            return visit.done(low, high);
        }
        return branch(low, high, sides, rest, visit);
    }

    private boolean branch(int[] low, int[] high, List<int[]> sides, List<int[]> rest, Visit visit) {
        int pick = 0;
        for (int i = 1; i < rest.size(); i++) {
            if (rest.get(i).length < rest.get(pick).length) {
                pick = i;
            }
        }
        List<int[]> others = new ArrayList<>(rest);
        int[] chosen = others.remove(pick);
        for (int at = 0; at < chosen.length; at += 3) {
            int[][] more = sides.toArray(new int[sides.size() + 1][]);
            more[sides.size()] = new int[] {chosen[at], chosen[at + 1], chosen[at + 2]};
            if (search(low.clone(), high.clone(), more, others, visit)) {
                return true;
            }
        }
        return false;
    }

    private static final int[] ENTAILED = {0};

    /** The sides still possible, or {@link #ENTAILED} when one holds whatever the positions. */
    private int[] possible(int[] disjunction, int[] low, int[] high) {
        int[] left = new int[disjunction.length];
        int size = 0;
        for (int at = 0; at < disjunction.length; at += 3) {
            int i = disjunction[at];
            int j = disjunction[at + 1];
            int c = disjunction[at + 2] + margin;
            if (low[j] - high[i] >= c) {
                return ENTAILED;
            }
            if (i != j && high[j] - low[i] >= c) {
                left[size] = i;
                left[size + 1] = j;
                left[size + 2] = disjunction[at + 2];
                size += 3;
            }
        }
        return size == disjunction.length ? disjunction : Arrays.copyOf(left, size);
    }

    /** Tightens bounds to the least and greatest solution of the chosen sides; false when there is none. */
    private boolean settle(int[] low, int[] high, List<int[]> sides) {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int[] side : sides) {
                int i = side[0];
                int j = side[1];
                int c = side[2] + margin;
                if (low[j] < low[i] + c) {
                    Optional<Integer> next = atLeast(domains[j], low[i] + c);
                    if (next.isEmpty() || next.get() > high[j]) {
                        return false;
                    }
                    low[j] = next.get();
                    moved = true;
                }
                if (high[i] > high[j] - c) {
                    Optional<Integer> next = atMost(domains[i], high[j] - c);
                    if (next.isEmpty() || next.get() < low[i]) {
                        return false;
                    }
                    high[i] = next.get();
                    moved = true;
                }
            }
        }
        return true;
    }

    private static Optional<Integer> atLeast(IntervalSet set, int value) {
        for (IntervalSet.Interval interval : set.intervals()) {
            if (value <= interval.to()) {
                return Optional.of(Math.max(value, interval.from()));
            }
        }
        return Optional.empty();
    }

    private static Optional<Integer> atMost(IntervalSet set, int value) {
        List<IntervalSet.Interval> intervals = set.intervals();
        for (int k = intervals.size() - 1; k >= 0; k--) {
            if (value >= intervals.get(k).from()) {
                return Optional.of(Math.min(value, intervals.get(k).to()));
            }
        }
        return Optional.empty();
    }
}

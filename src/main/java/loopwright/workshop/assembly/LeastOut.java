package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * The least that has to come out of a whole machine before something can: such that the loop stays closed if that is possible, then
 * the fewest pieces.
 *
 * <p>Sets that may do are asked from the cheapest up. One that does not do is stuck at some need: one of that need's alternatives has
 * to come out too.
 */
final class LeastOut {

    private final PuttingIn machine;
    private final long wet;

    LeastOut(PuttingIn machine) {
        this.machine = machine;
        long bits = 0;
        for (int i = 0; i < machine.pieces().size(); i++) {
            bits |= machine.pieces().get(i).traits().wet() ? 1L << i : 0;
        }
        this.wet = bits;
    }

    /** Whether coolant is in one of them. */
    boolean isWet(long set) {
        return (set & wet) != 0;
    }

    /** What comes out first, in that order; empty where there is no way. */
    Optional<List<Integer>> before(int piece) {
        return before(machine.needs(piece), 1L << piece);
    }

    /**
     * What comes out before some needs are met.
     *
     * @param stays bits of what stays in
     */
    Optional<List<Integer>> before(List<Need> wanted, long stays) {
        Comparator<Long> cheap = Comparator.comparing((Long s) -> isWet(s))
                .thenComparing(s -> Long.bitCount(s))
                .thenComparing(s -> s);
        PriorityQueue<Long> open = new PriorityQueue<>(cheap);
        Set<Long> seen = new HashSet<>();
        open.add(closed(machine.mustBeOut(wanted)));
        while (!open.isEmpty()) {
            long set = open.remove();
            if ((set & stays) != 0 || !seen.add(set)) {
                continue;
            }
            List<Integer> out = machine.takenOut(machine.all(), set);
            long in = machine.all();
            for (int i : out) {
                in &= ~(1L << i);
            }
            if (machine.met(wanted, in)) {
                return Optional.of(out);
            }
            more(set, in, wanted).forEach(s -> open.add(closed(s)));
        }
        return Optional.empty();
    }

    /** The set with all that its members need out whatever way they take. */
    private long closed(long set) {
        long out = set;
        long before = 0;
        while (out != before) {
            before = out;
            for (int i : machine.members(before)) {
                out |= machine.mustBeOut(machine.needs(i));
            }
        }
        return out;
    }

    /** Larger sets, one of which any set that does has in it. */
    private List<Long> more(long set, long in, List<Need> wanted) {
        List<Long> out = new ArrayList<>();
        stuck(wanted, set, in, out);
        for (int i : machine.members(set & in)) {
            stuck(machine.needs(i), set, in, out);
        }
        return out;
    }

    private void stuck(List<Need> wanted, long set, long in, List<Long> out) {
        wanted.stream()
                .filter(n -> !n.ways().free(in))
                .findFirst()
                .ifPresent(n -> n.ways().blockers().stream()
                        .map(b -> set | (b & in))
                        .filter(s -> s != set)
                        .forEach(out::add));
    }
}

package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * In which order pieces can be put in, found by taking a whole machine apart: taking one out never blocks another, so whatever can
 * come out next may, and what is left at the end blocks itself.
 *
 * <p>A piece comes out once what is plugged into it is out, its plugs and ports have been reached and one of its {@link Ways} is free of what is still in. What has
 * no way even in an empty chassis is held to go in by a tilt: it never blocks the order, and is named.
 */
final class PuttingIn {

    /** Up to so many pieces the smallest set that blocks itself is looked for among all. */
    private static final int ALL_SETS = 14;

    private final List<Piece> pieces;
    private final List<Ways> ways;
    private final List<List<Ways>> reach;

    PuttingIn(List<Piece> pieces, Ways.Hall hall) {
        this.pieces = List.copyOf(pieces);
        List<List<loopwright.geometry.SpaceBox>> solids =
                pieces.stream().map(Piece::solids).toList();
        this.ways = IntStream.range(0, pieces.size())
                .mapToObj(i -> Ways.of(pieces.get(i).solids(), 1L << i, hall, solids))
                .toList();
        this.reach = IntStream.range(0, pieces.size())
                .mapToObj(i -> pieces.get(i).reach().stream()
                        .map(r -> Ways.of(List.of(r), 1L << i, hall, solids))
                        .toList())
                .toList();
    }

    /** Whether a piece can leave a machine with these in: a way, and every plug of it at hand. */
    boolean leaves(int piece, long in) {
        for (int i = 0; i < pieces.size(); i++) {
            boolean carried = pieces.get(piece).carries().contains(pieces.get(i).id());
            if (carried && (in >> i & 1) != 0) {
                return false;
            }
        }
        return ways.get(piece).free(in) && reach.get(piece).stream().allMatch(r -> r.free(in));
    }

    /** The order in which pieces go in, as far as there is one; what is missing blocks itself. */
    List<Integer> order() {
        List<Integer> out = new ArrayList<>();
        long in = all();
        boolean more = true;
        while (more) {
            long now = in;
            List<Integer> can = IntStream.range(0, pieces.size())
                    .filter(i -> (now >> i & 1) != 0 && leaves(i, now))
                    .boxed()
                    .sorted(Comparator.comparing((Integer i) -> -pieces.get(i).turn())
                            .thenComparing(i -> -i))
                    .toList();
            more = !can.isEmpty();
            if (more) {
                out.add(can.get(0));
                in &= ~(1L << can.get(0));
            }
        }
        Collections.reverse(out);
        return List.copyOf(out);
    }

    private long all() {
        return (1L << pieces.size()) - 1;
    }

    /** The smallest set of which none can leave while the others of it are in; empty where everything comes out. */
    Set<Integer> deadlock() {
        long stuck = all();
        for (int i : order()) {
            stuck &= ~(1L << i);
        }
        if (stuck == 0) {
            return Set.of();
        }
        long least = Long.bitCount(stuck) <= ALL_SETS ? smallest(stuck) : thinned(stuck);
        Set<Integer> out = new LinkedHashSet<>();
        for (int i = 0; i < pieces.size(); i++) {
            if ((least >> i & 1) != 0) {
                out.add(i);
            }
        }
        return out;
    }

    private boolean blocksItself(long set) {
        for (int i = 0; i < pieces.size(); i++) {
            if ((set >> i & 1) != 0 && leaves(i, set)) {
                return false;
            }
        }
        return set != 0;
    }

    private long smallest(long stuck) {
        long best = stuck;
        for (long set = stuck; set != 0; set = set - 1 & stuck) {
            boolean smaller = Long.bitCount(set) < Long.bitCount(best)
                    || (Long.bitCount(set) == Long.bitCount(best) && set < best);
            if (smaller && blocksItself(set)) {
                best = set;
            }
        }
        return best;
    }

    private long thinned(long stuck) {
        long set = stuck;
        for (int i = 0; i < pieces.size(); i++) {
            long without = set & ~(1L << i);
            set = blocksItself(without) ? without : set;
        }
        return set;
    }

    /** What comes out before a piece can, the fewest there are; the piece itself last. Empty where it cannot. */
    List<Integer> service(int piece) {
        List<Long> states = new ArrayList<>(List.of(all()));
        java.util.Map<Long, Long> from = new java.util.HashMap<>();
        from.put(all(), 0L);
        for (int at = 0; at < states.size(); at++) {
            long in = states.get(at);
            if (leaves(piece, in)) {
                return path(from, in, piece);
            }
            for (int i = 0; i < pieces.size(); i++) {
                long next = in & ~(1L << i);
                if (i != piece && next != in && leaves(i, in) && !from.containsKey(next)) {
                    from.put(next, in);
                    states.add(next);
                }
            }
        }
        return List.of();
    }

    private List<Integer> path(java.util.Map<Long, Long> from, long end, int piece) {
        List<Integer> out = new ArrayList<>(List.of(piece));
        long at = end;
        while (at != all()) {
            long before = from.getOrDefault(at, all());
            out.add(Long.numberOfTrailingZeros(before & ~at));
            at = before;
        }
        Collections.reverse(out);
        return List.copyOf(out);
    }

    /** Whether a piece has no way along the axes even alone. */
    boolean tilts(int piece) {
        return ways.get(piece).none();
    }

    /** Rooms of a piece that no hand reaches along the axes even when nothing else is in. */
    List<Integer> outOfReach(int piece) {
        return IntStream.range(0, reach.get(piece).size())
                .filter(k -> reach.get(piece).get(k).none())
                .boxed()
                .toList();
    }
}

package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import loopwright.catalog.standard.Fastening.Driver;

/**
 * In which order pieces can be put in, found by taking a whole machine apart: taking one out never blocks another, so whatever can
 * come out next may, and what is left at the end blocks itself.
 *
 * <p>A piece comes out once what is plugged into it is out and each of its {@link Need}s has a way that is free of what is still in.
 * What has no way even in an empty chassis is held to be done by a tilt or another trick: it never blocks the order, and is named.
 */
final class PuttingIn {

    /** Up to so many pieces the smallest set that blocks itself is looked for among all. */
    private static final int ALL_SETS = 14;

    /** Bits of a long, but the sign. */
    private static final int MOST_PIECES = 63;

    private final List<Piece> pieces;
    private final Need.Maker maker;
    private final List<List<Need>> needs;
    private final long soft;

    PuttingIn(List<Piece> pieces, Hall hall, List<Driver> drivers) {
        if (pieces.size() > MOST_PIECES) {
            throw new IllegalArgumentException("at most " + MOST_PIECES + " pieces, but " + pieces.size());
        }
        this.pieces = List.copyOf(pieces);
        long runs = 0;
        for (int i = 0; i < pieces.size(); i++) {
            runs |= pieces.get(i).traits().kind() == Piece.Kind.SOFT_RUN ? 1L << i : 0;
        }
        this.soft = runs;
        this.maker = new Need.Maker(
                new WayFinder(hall, pieces.stream().map(Piece::solids).toList()), drivers, runs);
        this.needs = IntStream.range(0, pieces.size())
                .mapToObj(i -> maker.of(pieces.get(i), holders(i)))
                .toList();
    }

    /** The piece itself, and what it is plugged into, directly or through others. */
    private Need.Holders holders(int piece) {
        long own = 1L << piece;
        long out = own;
        long before = 0;
        while (out != before) {
            before = out;
            for (int i = 0; i < pieces.size(); i++) {
                out |= (carried(i) & before) != 0 ? 1L << i : 0;
            }
        }
        return new Need.Holders(own, out & ~own);
    }

    /** What is plugged into a piece, as bits. */
    private long carried(int piece) {
        long out = 0;
        for (int i = 0; i < pieces.size(); i++) {
            out |= pieces.get(piece).carries().contains(pieces.get(i).id()) ? 1L << i : 0;
        }
        return out;
    }

    /** What a piece needs, and what is plugged into it as one need more. */
    List<Need> needs(int piece) {
        List<Need> out = new ArrayList<>();
        Ways carried = Ways.one(carried(piece));
        out.add(new Need(Need.Kind.WAY, "what is plugged into it", carried, carried));
        out.addAll(needs.get(piece));
        return List.copyOf(out);
    }

    /** What a body of a piece needs that has screws of its own. */
    List<Need> needs(int piece, Piece.Body body) {
        return maker.of(pieces.get(piece), body, holders(piece));
    }

    /** Whether needs are met with these in. */
    boolean met(List<Need> wanted, long in) {
        return wanted.stream().allMatch(n -> n.ways().free(in));
    }

    /** Whether a piece can leave a machine with these in. */
    boolean leaves(int piece, long in) {
        return (carried(piece) & in) == 0 && met(needs.get(piece), in);
    }

    /** Bits of runs that swing aside. */
    long soft() {
        return soft;
    }

    /** The pieces. */
    List<Piece> pieces() {
        return pieces;
    }

    /** The order in which pieces go in, as far as there is one; what is missing blocks itself. */
    List<Integer> order() {
        List<Integer> out = new ArrayList<>(takenOut(all(), all()));
        Collections.reverse(out);
        return List.copyOf(out);
    }

    /** Takes out what can come out of some, late in the builder's usual turn first. */
    List<Integer> takenOut(long from, long only) {
        List<Integer> out = new ArrayList<>();
        long in = from;
        boolean more = true;
        while (more) {
            long now = in;
            List<Integer> can = IntStream.range(0, pieces.size())
                    .filter(i -> (now & only & 1L << i) != 0 && leaves(i, now))
                    .boxed()
                    .sorted(Comparator.comparing(
                                    (Integer i) -> -pieces.get(i).traits().turn())
                            .thenComparing(i -> -i))
                    .toList();
            more = !can.isEmpty();
            if (more) {
                out.add(can.get(0));
                in &= ~(1L << can.get(0));
            }
        }
        return List.copyOf(out);
    }

    /** All pieces. */
    long all() {
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
        return new LinkedHashSet<>(members(least));
    }

    /** Pieces of bits. */
    List<Integer> members(long set) {
        return IntStream.range(0, pieces.size())
                .filter(i -> (set >> i & 1) != 0)
                .boxed()
                .toList();
    }

    private boolean blocksItself(long set) {
        return set != 0 && members(set).stream().noneMatch(i -> leaves(i, set));
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

    /** What has to come out before a piece can, whatever way is taken. */
    long mustBeOut(List<Need> wanted) {
        return wanted.stream().mapToLong(n -> n.ways().inAll()).reduce(0L, (a, b) -> a | b);
    }

    /** Needs of a piece that no way meets even when nothing else is in. */
    List<Need> unmet(int piece) {
        return needs.get(piece).stream().filter(n -> n.ways().none()).toList();
    }
}

package loopwright.power.cable;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * The shortest way along the axes from one point to another through what is open inside and through holes.
 *
 * <p>Unit: hundredths of a millimetre. Exact: among boxes one of the shortest ways runs along faces, ends and holes
 * ({@link Lattice}); it is looked for with the distance along the axes as what is left at least. A way is never shorter
 * than that distance, and another hole never makes it longer.
 */
public final class OpenWays {

    private final Lattice lattice;

    /**
     * Ways in a case.
     *
     * @param inside size of the inside along x, y, z
     * @param keepHmm what a cable's middle keeps from walls and boxes
     * @param obstacles what is in the way, each with the holes that may be used
     * @param ends every point that will be asked about
     */
    public OpenWays(PointHmm inside, int keepHmm, List<Obstacle> obstacles, Collection<PointHmm> ends) {
        this.lattice = new Lattice(inside, keepHmm, obstacles, ends);
    }

    /** A node to look at: what the whole way is at least, and what it is so far. */
    private record Open(int least, int soFar, int node) implements Comparable<Open> {
        @Override
        public int compareTo(Open other) {
            if (least != other.least) {
                return Integer.compare(least, other.least);
            }
            int farther = Integer.compare(other.soFar, soFar);
            return farther != 0 ? farther : Integer.compare(node, other.node);
        }
    }

    /** The shortest way; empty where there is none. */
    public Optional<Way> find(PointHmm from, PointHmm to) {
        int start = lattice.node(from);
        int end = lattice.node(to);
        if (start < 0 || end < 0) {
            return Optional.empty();
        }
        int[] soFar = new int[lattice.size()];
        int[] before = new int[lattice.size()];
        Arrays.fill(soFar, Integer.MAX_VALUE);
        soFar[start] = 0;
        before[start] = start;
        PriorityQueue<Open> open = new PriorityQueue<>();
        open.add(new Open(from.squareWayTo(to), 0, start));
        while (!open.isEmpty()) {
            Open one = open.remove();
            if (one.node() == end) {
                return Optional.of(new Way(one.soFar(), holes(before, start, end)));
            }
            if (one.soFar() > soFar[one.node()]) {
                continue;
            }
            PointHmm at = lattice.point(one.node());
            for (int next : lattice.next(one.node())) {
                PointHmm there = lattice.point(next);
                int length = one.soFar() + at.squareWayTo(there);
                if (length < soFar[next]) {
                    soFar[next] = length;
                    before[next] = one.node();
                    open.add(new Open(length + there.squareWayTo(to), length, next));
                }
            }
        }
        return Optional.empty();
    }

    private List<String> holes(int[] before, int start, int end) {
        Deque<String> out = new ArrayDeque<>();
        for (int node = end; node != start; node = before[node]) {
            String hole = lattice.hole(node, before[node]);
            if (!hole.isEmpty() && !hole.equals(out.peekFirst())) {
                out.addFirst(hole);
            }
        }
        return List.copyOf(out);
    }
}

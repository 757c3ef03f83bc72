package loopwright.power.cable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.catalog.basis.Axis;
import loopwright.geometry.SpaceBox;

/**
 * The lines on which a shortest way along the axes can be looked for: through every end, every hole and every face of a
 * box, at the distance that cables keep. Among boxes, one of the shortest ways runs on these lines only.
 *
 * <p>Unit: hundredths of a millimetre. A step of the lattice is closed when it runs inside a box; on a box's border it is
 * open.
 */
final class Lattice {

    private final Map<Axis, int[]> lines;
    private final Map<Axis, BitSet> closed;
    private final Map<Axis, Map<Integer, String>> holes = new EnumMap<>(Axis.class);

    /**
     * Lattice.
     *
     * @param inside size of the inside along x, y, z
     * @param keep distance of a cable's middle from walls and boxes
     */
    Lattice(PointHmm inside, int keep, List<Obstacle> obstacles, Collection<PointHmm> ends) {
        this.lines = Map.of(
                Axis.X, lines(Axis.X, inside, keep, obstacles, ends),
                Axis.Y, lines(Axis.Y, inside, keep, obstacles, ends),
                Axis.Z, lines(Axis.Z, inside, keep, obstacles, ends));
        this.closed = Map.of(Axis.X, new BitSet(), Axis.Y, new BitSet(), Axis.Z, new BitSet());
        for (Obstacle obstacle : obstacles) {
            for (Axis axis : Axis.values()) {
                close(obstacle, axis, keep);
            }
        }
    }

    private static int[] lines(
            Axis axis, PointHmm inside, int keep, List<Obstacle> obstacles, Collection<PointHmm> ends) {
        TreeSet<Integer> all = new TreeSet<>(List.of(keep, inside.along(axis) - keep));
        for (Obstacle obstacle : obstacles) {
            all.add(obstacle.box().along(axis).from() - keep);
            all.add(obstacle.box().along(axis).to() + keep);
            obstacle.holes().forEach(h -> all.add(h.at().along(axis)));
        }
        ends.forEach(e -> all.add(e.along(axis)));
        return all.stream()
                .filter(v -> v >= keep && v <= inside.along(axis) - keep)
                .mapToInt(v -> v)
                .toArray();
    }

    private int[] of(Axis axis) {
        return lines.getOrDefault(axis, new int[0]);
    }

    private BitSet closed(Axis axis) {
        return closed.getOrDefault(axis, new BitSet());
    }

    /** Numbers of lines or steps, both counted. */
    private record Numbers(int from, int to) {}

    /** Closes the steps along an axis that run inside a box, but for those through its holes. */
    private void close(Obstacle obstacle, Axis axis, int keep) {
        Map<Axis, Numbers> inside = new EnumMap<>(Axis.class);
        for (Axis each : Axis.values()) {
            inside.put(each, numbers(obstacle.box().along(each), each, axis, keep));
        }
        Numbers x = inside.getOrDefault(Axis.X, NONE);
        Numbers y = inside.getOrDefault(Axis.Y, NONE);
        Numbers z = inside.getOrDefault(Axis.Z, NONE);
        Map<Integer, String> through = Map.of();
        if (obstacle.thinnest() == axis) {
            through = through(obstacle, axis, inside.getOrDefault(axis, NONE));
            holes(axis).putAll(through);
        }
        for (int i = x.from(); i <= x.to(); i++) {
            for (int j = y.from(); j <= y.to(); j++) {
                for (int k = z.from(); k <= z.to(); k++) {
                    if (!through.containsKey(node(i, j, k))) {
                        closed(axis).set(node(i, j, k));
                    }
                }
            }
        }
    }

    private static final Numbers NONE = new Numbers(0, -1);

    /** Along the way: the steps between the faces. Aside: the lines strictly between them. */
    private Numbers numbers(SpaceBox.Reach reach, Axis each, Axis way, int keep) {
        int[] all = of(each);
        int from = Arrays.binarySearch(all, reach.from() - keep);
        int to = Arrays.binarySearch(all, reach.to() + keep);
        int first = from >= 0 ? from : -from - 1;
        int last = to >= 0 ? to - 1 : -to - 2;
        if (each == way) {
            return new Numbers(Math.max(0, from >= 0 ? first : first - 1), last);
        }
        return new Numbers(from >= 0 ? first + 1 : first, last);
    }

    /** The steps through holes, with their ids. */
    private Map<Integer, String> through(Obstacle obstacle, Axis axis, Numbers steps) {
        Map<Integer, String> out = new TreeMap<>();
        for (Hole hole : obstacle.holes()) {
            int i = index(Axis.X, hole.at());
            int j = index(Axis.Y, hole.at());
            int k = index(Axis.Z, hole.at());
            if (i < 0 || j < 0 || k < 0) {
                continue;
            }
            for (int s = steps.from(); s <= steps.to(); s++) {
                out.put(node(axis == Axis.X ? s : i, axis == Axis.Y ? s : j, axis == Axis.Z ? s : k), hole.id());
            }
        }
        return out;
    }

    private Map<Integer, String> holes(Axis axis) {
        return holes.computeIfAbsent(axis, a -> new TreeMap<>());
    }

    private int index(Axis axis, PointHmm point) {
        int at = Arrays.binarySearch(of(axis), point.along(axis));
        return at >= 0 ? at : -1;
    }

    private int node(int i, int j, int k) {
        return (i * of(Axis.Y).length + j) * of(Axis.Z).length + k;
    }

    /** How many nodes there are. */
    int size() {
        return of(Axis.X).length * of(Axis.Y).length * of(Axis.Z).length;
    }

    /** The node of a point; below 0 where there is none. */
    int node(PointHmm point) {
        int i = index(Axis.X, point);
        int j = index(Axis.Y, point);
        int k = index(Axis.Z, point);
        return i < 0 || j < 0 || k < 0 ? -1 : node(i, j, k);
    }

    /** The point of a node. */
    PointHmm point(int node) {
        int nz = of(Axis.Z).length;
        int ny = of(Axis.Y).length;
        return new PointHmm(of(Axis.X)[node / (ny * nz)], of(Axis.Y)[node / nz % ny], of(Axis.Z)[node % nz]);
    }

    /** The nodes one open step away. */
    List<Integer> next(int node) {
        int nz = of(Axis.Z).length;
        int ny = of(Axis.Y).length;
        List<Integer> out = new ArrayList<>();
        step(out, Axis.X, node, ny * nz, node / (ny * nz), of(Axis.X).length);
        step(out, Axis.Y, node, nz, node / nz % ny, ny);
        step(out, Axis.Z, node, 1, node % nz, nz);
        return out;
    }

    private void step(List<Integer> out, Axis axis, int node, int stride, int index, int count) {
        if (index + 1 < count && !closed(axis).get(node)) {
            out.add(node + stride);
        }
        if (index > 0 && !closed(axis).get(node - stride)) {
            out.add(node - stride);
        }
    }

    /** The id of the hole between two neighbouring nodes; empty where there is none. */
    String hole(int one, int other) {
        PointHmm a = point(one);
        PointHmm b = point(other);
        Axis axis = a.x() != b.x() ? Axis.X : a.y() != b.y() ? Axis.Y : Axis.Z;
        return holes(axis).getOrDefault(Math.min(one, other), "");
    }
}

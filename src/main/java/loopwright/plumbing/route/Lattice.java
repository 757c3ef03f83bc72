package loopwright.plumbing.route;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;

/**
 * Lines along the three axes and where they cross: evenly spaced, and one through every port and every elbow on it.
 *
 * <p>Even lines start at the tube's radius; one that is nearer than half the spacing to a port's line is left out. No two
 * neighbours are farther apart than a tube is thick, so that nothing lies between them unseen.
 */
final class Lattice {

    private final int[][] lines = new int[3][];
    private final boolean[] blocked;

    /**
     * Lays the lines.
     *
     * @param spacing wanted between even lines; taken smaller for thin tube
     */
    Lattice(Space space, TubeShape tube, int spacing, Collection<End> ends) {
        int apart = Math.min(spacing, tube.radius() * 4 / 3);
        for (Axis axis : Axis.values()) {
            lines[Compass.number(axis)] = lines(space, tube, apart, ends, axis);
        }
        blocked = new boolean[nodes()];
        space.solids().forEach(s -> block(s.grown(tube.radius())));
        space.fanAir().forEach(s -> block(s.grown(tube.radius())));
    }

    private static int[] lines(Space space, TubeShape tube, int apart, Collection<End> ends, Axis axis) {
        TreeSet<Integer> own = new TreeSet<>();
        int least = tube.radius();
        int most = space.size().along(axis) - tube.radius();
        for (End end : ends) {
            int at = end.at().along(axis);
            own.add(at);
            if (end.out().axis() == axis) {
                tube.elbow().ifPresent(e -> own.add(at + end.out().sign() * e.height()));
            }
        }
        TreeSet<Integer> all = new TreeSet<>();
        own.stream().filter(v -> v >= least && v <= most).forEach(all::add);
        TreeSet<Integer> kept = new TreeSet<>(all);
        for (int v = least; v <= most; v += apart) {
            Integer below = kept.floor(v);
            Integer above = kept.ceiling(v);
            boolean near = (below != null && v - below < apart / 2) || (above != null && above - v < apart / 2);
            if (!near) {
                all.add(v);
            }
        }
        return all.stream().mapToInt(Integer::intValue).toArray();
    }

    private void block(Solid solid) {
        int[] from = new int[3];
        int[] to = new int[3];
        for (Axis axis : Axis.values()) {
            from[Compass.number(axis)] = firstAbove(axis, solid.low().along(axis));
            to[Compass.number(axis)] = firstAbove(axis, solid.high().along(axis) - 1);
        }
        for (int x = from[0]; x < to[0]; x++) {
            for (int y = from[1]; y < to[1]; y++) {
                int row = (x * lines[1].length + y) * lines[2].length;
                if (from[2] < to[2]) {
                    Arrays.fill(blocked, row + from[2], row + to[2], true);
                }
            }
        }
    }

    /** Index of the first line beyond a coordinate. */
    private int firstAbove(Axis axis, int value) {
        int at = Arrays.binarySearch(lines[Compass.number(axis)], value);
        return at >= 0 ? at + 1 : -at - 1;
    }

    int nodes() {
        return lines[0].length * lines[1].length * lines[2].length;
    }

    boolean isBlocked(int node) {
        return blocked[node];
    }

    int index(int node, Axis axis) {
        return switch (axis) {
            case X -> node / (lines[1].length * lines[2].length);
            case Y -> node / lines[2].length % lines[1].length;
            case Z -> node % lines[2].length;
        };
    }

    Where at(int node) {
        return new Where(lines[0][index(node, Axis.X)], lines[1][index(node, Axis.Y)], lines[2][index(node, Axis.Z)]);
    }

    int coordinate(int node, Axis axis) {
        return lines[Compass.number(axis)][index(node, axis)];
    }

    /** Difference of two neighbours' numbers along an axis. */
    int stride(Axis axis) {
        return switch (axis) {
            case X -> lines[1].length * lines[2].length;
            case Y -> lines[2].length;
            case Z -> 1;
        };
    }

    int count(Axis axis) {
        return lines[Compass.number(axis)].length;
    }

    int line(Axis axis, int index) {
        return lines[Compass.number(axis)][index];
    }

    /** The crossing at or beyond a point, at least so far off along a heading; −1 where there is none. */
    int nodeBeyond(Where point, Heading heading, int leastHmm) {
        int[] index = new int[3];
        for (Axis axis : Axis.values()) {
            int value = point.along(axis) + (axis == heading.axis() ? heading.sign() * leastHmm : 0);
            int at = Arrays.binarySearch(lines[Compass.number(axis)], value);
            if (at < 0 && axis != heading.axis()) {
                return -1;
            }
            int insertion = -at - 1;
            index[Compass.number(axis)] = at >= 0 ? at : heading.sign() > 0 ? insertion : insertion - 1;
            if (index[Compass.number(axis)] < 0 || index[Compass.number(axis)] >= lines[Compass.number(axis)].length) {
                return -1;
            }
        }
        return (index[0] * lines[1].length + index[1]) * lines[2].length + index[2];
    }

    /** Nodes onwards from one along a heading, itself first, as far as they are free. */
    List<Integer> ray(int node, Heading heading) {
        List<Integer> out = new ArrayList<>();
        int step = heading.sign() * stride(heading.axis());
        int left = heading.sign() > 0
                ? count(heading.axis()) - 1 - index(node, heading.axis())
                : index(node, heading.axis());
        int at = node;
        while (!blocked[at]) {
            out.add(at);
            if (left-- == 0) {
                break;
            }
            at += step;
        }
        return out;
    }
}

package loopwright.plumbing.route;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Axis;

/**
 * The inside of a chassis with all that is in the way.
 *
 * @param size of the inside: one corner is the datum
 * @param solids that neither tube nor fitting may enter
 * @param fanAir in front of fans: tube may not enter it, fittings may
 */
public record Space(Where size, List<Solid> solids, List<Solid> fanAir) {

    /** What the walls are called. */
    public static final String WALLS = "the walls";

    /** Copies. */
    public Space {
        solids = List.copyOf(solids);
        fanAir = List.copyOf(fanAir);
    }

    /** The same with more in the way. */
    public Space with(List<Solid> more) {
        List<Solid> all = new ArrayList<>(solids);
        all.addAll(more);
        return new Space(size, all, fanAir);
    }

    /** The same without the bodies of some names. */
    public Space without(java.util.Set<String> bodies) {
        return new Space(
                size,
                solids.stream().filter(s -> !bodies.contains(s.body())).toList(),
                fanAir.stream().filter(s -> !bodies.contains(s.body())).toList());
    }

    /** Whether a fitting's box is free. */
    boolean takes(Solid fitting) {
        return isInside(fitting.low(), fitting.high(), 0) && solids.stream().noneMatch(s -> s.meets(fitting));
    }

    /** Whether a tube may lie along the line between two points on one axis. */
    boolean isFree(Where a, Where b, int radius) {
        Solid line = Solid.around("", a, b, 0);
        return isInside(line.low(), line.high(), radius)
                && solids.stream().noneMatch(s -> s.grown(radius).meets(line))
                && fanAir.stream().noneMatch(s -> s.grown(radius).meets(line));
    }

    private boolean isInside(Where low, Where high, int radius) {
        for (Axis axis : Axis.values()) {
            if (low.along(axis) < radius || high.along(axis) > size.along(axis) - radius) {
                return false;
            }
        }
        return true;
    }
}

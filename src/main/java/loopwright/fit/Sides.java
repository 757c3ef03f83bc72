package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.geometry.Edges;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.Sum;

/**
 * Writes "these two boxes must not meet" as a choice of sides: {@code x_j − x_i ≥ c + t} for one of its sides.
 *
 * <p>Variables: 2m is the position along mount m, 2m + 1 across it, and the last one is the constant 0. A disjunction is
 * an int array of triples (i, j, c), c being the need and what the {@link Strictness} adds. Unit: hundredths of a
 * millimetre; t is the margin asked for.
 */
final class Sides {

    private final int zero;
    private final Chassis chassis;
    private final Strictness strictness;

    Sides(int mounts, Chassis chassis, Strictness strictness) {
        this.zero = 2 * mounts;
        this.chassis = chassis;
        this.strictness = strictness;
    }

    int variables() {
        return zero + 1;
    }

    /** All disjunctions of two bodies; a frame is absent for a body that does not slide. */
    List<int[]> between(Occupant a, Optional<MountFrame> frameA, Occupant b, Optional<MountFrame> frameB) {
        List<int[]> out = new ArrayList<>();
        if (!a.pairsWith(b)) {
            return out;
        }
        for (int boxA = 0; boxA < a.boxes().size(); boxA++) {
            for (int boxB = 0; boxB < b.boxes().size(); boxB++) {
                if (!a.boxes().get(boxA).room() || !b.boxes().get(boxB).room()) {
                    out.add(sides(new Boxed(a, boxA, frameA), new Boxed(b, boxB, frameB)));
                }
            }
        }
        return out;
    }

    /** A box of a body that may slide. */
    private record Boxed(Occupant body, int number, Optional<MountFrame> frame) {
        SpaceBox box() {
            return body.boxes().get(number);
        }

        Edges edges(Axis axis) {
            return body.body().boxes().get(number).along(axis);
        }
    }

    private int[] sides(Boxed a, Boxed b) {
        int need = Math.max(a.box().needHmm(), b.box().needHmm());
        int[] out = new int[18];
        int at = 0;
        for (Axis axis : Axis.values()) {
            int varA = variable(a.frame(), axis);
            int varB = variable(b.frame(), axis);
            SpaceBox.Reach ra = a.box().along(axis);
            SpaceBox.Reach rb = b.box().along(axis);
            int aBelow = need
                    + strictness.beyondNeedHmm(
                            b.edges(axis).from(), a.edges(axis).to());
            int bBelow = need
                    + strictness.beyondNeedHmm(
                            a.edges(axis).from(), b.edges(axis).to());
            at = put(out, at, varA, varB, ra.to() + aBelow - rb.from());
            at = put(out, at, varB, varA, rb.to() + bBelow - ra.from());
        }
        return out;
    }

    /** What the walls ask of a body. */
    List<int[]> walls(Occupant body, Optional<MountFrame> frame) {
        List<int[]> out = new ArrayList<>();
        for (Face wall : Face.values()) {
            out.addAll(wall(body, frame, wall));
        }
        return out;
    }

    /** What one wall asks of a body. */
    List<int[]> wall(Occupant body, Optional<MountFrame> frame, Face wall) {
        List<int[]> out = new ArrayList<>();
        if (body.pairsWith(wall)) {
            for (int i = 0; i < body.boxes().size(); i++) {
                out.add(wall(new Boxed(body, i, frame), wall));
            }
        }
        return out;
    }

    private int[] wall(Boxed body, Face wall) {
        Axis axis = wall.normal();
        SpaceBox.Reach reach = body.box().along(axis);
        Edges edges = body.edges(axis);
        int need = body.box().needHmm();
        int[] out = new int[3];
        if (wall.isHigh()) {
            Sum size = MountFrame.wall(chassis, axis);
            int from = reach.to() + need + strictness.beyondNeedHmm(size, edges.to());
            put(out, 0, variable(body.frame(), axis), zero, from - size.valueHmm());
        } else {
            int from = need + strictness.beyondNeedHmm(edges.from(), Sum.ZERO);
            put(out, 0, zero, variable(body.frame(), axis), from - reach.from());
        }
        return out;
    }

    private int variable(Optional<MountFrame> frame, Axis axis) {
        if (frame.isEmpty()) {
            return zero;
        }
        int along = 2 * frame.get().index();
        if (axis == frame.get().lengthwise()) {
            return along;
        }
        return axis == frame.get().sideways() ? along + 1 : zero;
    }

    private static int put(int[] out, int at, int i, int j, int c) {
        out[at] = i;
        out[at + 1] = j;
        out[at + 2] = c;
        return at + 3;
    }
}

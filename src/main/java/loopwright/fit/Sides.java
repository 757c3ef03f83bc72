package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Shell;
import loopwright.geometry.SpaceBox;

/**
 * Writes "these two boxes must not meet" as a choice of sides: {@code x_j − x_i ≥ c + t} for one of its sides.
 *
 * <p>Variables: 2m is the position along mount m, 2m + 1 across it, and the last one is the constant 0. A disjunction is
 * an int array of triples (i, j, c). Unit: hundredths of a millimetre; t is the margin asked for.
 */
final class Sides {

    private final int zero;
    private final Shell.Interior interior;

    Sides(int mounts, Shell.Interior interior) {
        this.zero = 2 * mounts;
        this.interior = interior;
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
        for (SpaceBox boxA : a.boxes()) {
            for (SpaceBox boxB : b.boxes()) {
                if (!boxA.room() || !boxB.room()) {
                    out.add(sides(boxA, frameA, boxB, frameB));
                }
            }
        }
        return out;
    }

    private int[] sides(SpaceBox a, Optional<MountFrame> frameA, SpaceBox b, Optional<MountFrame> frameB) {
        int need = Math.max(a.needHmm(), b.needHmm());
        int[] out = new int[18];
        int at = 0;
        for (Axis axis : Axis.values()) {
            int varA = variable(frameA, axis);
            int varB = variable(frameB, axis);
            SpaceBox.Reach ra = a.along(axis);
            SpaceBox.Reach rb = b.along(axis);
            at = put(out, at, varA, varB, ra.to() + need - rb.from());
            at = put(out, at, varB, varA, rb.to() + need - ra.from());
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
            for (SpaceBox box : body.boxes()) {
                SpaceBox.Reach reach = box.along(wall.normal());
                int variable = variable(frame, wall.normal());
                int[] side = new int[3];
                if (wall.isHigh()) {
                    int size = MountFrame.interior(interior, wall.normal()).valueHmm();
                    put(side, 0, variable, zero, reach.to() + box.needHmm() - size);
                } else {
                    put(side, 0, zero, variable, box.needHmm() - reach.from());
                }
                out.add(side);
            }
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

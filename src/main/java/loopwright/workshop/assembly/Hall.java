package loopwright.workshop.assembly;

import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;

/**
 * The room that is moved in.
 *
 * @param x the interior along x; y and z alike
 * @param open faces whose panel is off
 * @param builtIn what never moves
 */
record Hall(Reach x, Reach y, Reach z, Set<Face> open, List<SpaceBox> builtIn) {

    /** Copies. */
    Hall {
        open = Set.copyOf(open);
        builtIn = List.copyOf(builtIn);
    }

    /** The interior along an axis. */
    Reach along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** How far boxes may step towards a wall. */
    int roomHmm(List<SpaceBox> boxes, Face towards) {
        int room = Integer.MAX_VALUE;
        for (SpaceBox box : boxes) {
            int left = towards.isHigh()
                    ? along(towards.normal()).to() - box.along(towards.normal()).to()
                    : box.along(towards.normal()).from()
                            - along(towards.normal()).from();
            room = Math.min(room, left);
        }
        return room;
    }

    /** Whether no part of a box is in a wall: what is beyond a face that is open is outside, where no wall is. */
    boolean holds(SpaceBox box) {
        for (Face face : open) {
            if (isBeyond(box, face)) {
                return true;
            }
        }
        for (Face face : Face.values()) {
            if (!open.contains(face) && roomHmm(List.of(box), face) < 0) {
                return false;
            }
        }
        return true;
    }

    private boolean isBeyond(SpaceBox box, Face face) {
        Reach its = box.along(face.normal());
        return face.isHigh()
                ? its.from() >= along(face.normal()).to()
                : its.to() <= along(face.normal()).from();
    }
}

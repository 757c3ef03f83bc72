package loopwright.fit;

import java.util.Optional;
import loopwright.catalog.basis.Axis;

/**
 * A body where it stands in a layout: what the plain re-check looks at.
 *
 * @param shift how far it is moved along x, y, z from the coordinates of its boxes; zeros for what does not slide
 */
record Standing(Occupant occupant, Shift shift) {

    /** A move along x, y and z. */
    record Shift(int x, int y, int z) {
        int along(Axis axis) {
            return switch (axis) {
                case X -> x;
                case Y -> y;
                case Z -> z;
            };
        }
    }

    static Standing still(Occupant occupant) {
        return new Standing(occupant, new Shift(0, 0, 0));
    }

    static Standing at(Hang hang, int along, int aside) {
        return new Standing(
                hang.occupant(),
                new Shift(
                        shift(hang, Axis.X, along, aside),
                        shift(hang, Axis.Y, along, aside),
                        shift(hang, Axis.Z, along, aside)));
    }

    private static int shift(Hang hang, Axis axis, int along, int aside) {
        if (axis == hang.frame().lengthwise()) {
            return along;
        }
        return axis == hang.frame().sideways() ? aside : 0;
    }

    int from(int box, Axis axis) {
        return occupant.boxes().get(box).along(axis).from() + shift.along(axis);
    }

    int to(int box, Axis axis) {
        return occupant.boxes().get(box).along(axis).to() + shift.along(axis);
    }

    /** What a box is called: the mount comes first for a stack. */
    String name(int box) {
        String what = occupant.boxes().get(box).what();
        return Optional.of(occupant)
                .filter(o -> o.group() == Occupant.Group.STACK)
                .map(o -> o.name() + " " + what)
                .orElse(what);
    }
}

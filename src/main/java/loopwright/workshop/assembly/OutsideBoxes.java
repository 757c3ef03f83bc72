package loopwright.workshop.assembly;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.fit.MountFrame;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.plumbing.route.Where;

/**
 * Boxes and points at a mount by how far they lie outwards from its seat plane. Unit: hundredths of a millimetre.
 *
 * @param frame of the mount
 */
record OutsideBoxes(MountFrame frame) {

    /** The face that the mount is on. */
    Face face() {
        return frame.panel().face();
    }

    private int plane(int outwardsHmm) {
        return frame.seatPlane().valueHmm() + (face().isHigh() ? outwardsHmm : -outwardsHmm);
    }

    /** A box from one distance outwards to another. */
    SpaceBox slab(String what, int fromHmm, int toHmm, Reach along, Reach aside) {
        int one = plane(fromHmm);
        int other = plane(toHmm);
        Reach depth = new Reach(Math.min(one, other), Math.max(one, other));
        return new SpaceBox(
                what,
                false,
                0,
                pick(Axis.X, along, aside, depth),
                pick(Axis.Y, along, aside, depth),
                pick(Axis.Z, along, aside, depth));
    }

    private Reach pick(Axis axis, Reach along, Reach aside, Reach depth) {
        if (axis == frame.lengthwise()) {
            return along;
        }
        return axis == frame.sideways() ? aside : depth;
    }

    /** A lid: its skin, and its wall all round, hollow inside. */
    List<SpaceBox> lid(String what, Lid lid) {
        Reach along = lid.along();
        Reach aside = lid.aside();
        int wall = lid.wallHmm();
        int base = lid.baseHmm();
        int top = base + lid.insideHmm();
        return List.of(
                slab(what, top, top + lid.skinHmm(), along, aside),
                slab(what, base, top, new Reach(along.from(), along.from() + wall), aside),
                slab(what, base, top, new Reach(along.to() - wall, along.to()), aside),
                slab(what, base, top, along, new Reach(aside.from(), aside.from() + wall)),
                slab(what, base, top, along, new Reach(aside.to() - wall, aside.to())));
    }

    /**
     * A lid's sizes.
     *
     * @param baseHmm outwards to its foot
     * @param insideHmm free height under its skin
     */
    record Lid(Reach along, Reach aside, int wallHmm, int baseHmm, int insideHmm, int skinHmm) {}

    /** A point so far outwards. */
    Where point(int outwardsHmm, int alongHmm, int asideHmm) {
        Reach along = new Reach(alongHmm, alongHmm);
        Reach aside = new Reach(asideHmm, asideHmm);
        SpaceBox at = slab("", outwardsHmm, outwardsHmm, along, aside);
        return new Where(at.x().from(), at.y().from(), at.z().from());
    }

    /** What is around a middle. */
    static Reach around(int middleHmm, int wholeHmm) {
        return new Reach(middleHmm - wholeHmm / 2, middleHmm + wholeHmm / 2);
    }

    /** The face that looks the other way. */
    static Face opposite(Face face) {
        return switch (face) {
            case LEFT -> Face.RIGHT;
            case RIGHT -> Face.LEFT;
            case FRONT -> Face.REAR;
            case REAR -> Face.FRONT;
            case FLOOR -> Face.ROOF;
            case ROOF -> Face.FLOOR;
        };
    }
}

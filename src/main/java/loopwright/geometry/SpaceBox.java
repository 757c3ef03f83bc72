package loopwright.geometry;

import loopwright.catalog.basis.Axis;

/**
 * A box as plain integers: what the solver and the re-check compute with.
 *
 * <p>Units: hundredths of a millimetre. For a box that slides, the coordinates along its two sliding axes are relative
 * to the stack's position.
 *
 * @param room whether it is space kept free rather than matter
 */
public record SpaceBox(String what, boolean room, int needHmm, Reach x, Reach y, Reach z) {

    /** From and to along one axis. */
    public record Reach(int from, int to) {}

    /** The values of a body's box. */
    public static SpaceBox of(BodyBox box) {
        return new SpaceBox(
                box.what(),
                box.fill() == BodyBox.Fill.ROOM,
                box.need().valueHmm(),
                reach(box.x()),
                reach(box.y()),
                reach(box.z()));
    }

    private static Reach reach(Edges edges) {
        return new Reach(edges.from().valueHmm(), edges.to().valueHmm());
    }

    /** Its reach along an axis. */
    public Reach along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** The box moved along each axis. */
    public SpaceBox moved(int dx, int dy, int dz) {
        return new SpaceBox(what, room, needHmm, moved(x, dx), moved(y, dy), moved(z, dz));
    }

    private static Reach moved(Reach reach, int by) {
        return new Reach(reach.from() + by, reach.to() + by);
    }
}

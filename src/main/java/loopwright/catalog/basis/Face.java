package loopwright.catalog.basis;

/** A side of the chassis: the wall it is, its normal axis, and whether it is the wall at the high coordinate. */
public enum Face {
    /** The wall at x = 0. */
    LEFT(Axis.X, false),
    /** The wall at x = width. */
    RIGHT(Axis.X, true),
    /** The wall at y = 0. */
    FRONT(Axis.Y, false),
    /** The wall at y = depth. */
    REAR(Axis.Y, true),
    /** The wall at z = 0. */
    FLOOR(Axis.Z, false),
    /** The wall at z = height. */
    ROOF(Axis.Z, true);

    private final Axis normal;
    private final boolean high;

    Face(Axis normal, boolean high) {
        this.normal = normal;
        this.high = high;
    }

    /** The axis that the wall is square to. */
    public Axis normal() {
        return normal;
    }

    /** Whether the wall is the one at the larger coordinate. */
    public boolean isHigh() {
        return high;
    }
}

package loopwright.catalog.basis;

/** A signed direction in the chassis frame. */
public enum Heading {
    /** Towards smaller x. */
    LEFT(Axis.X, -1),
    /** Towards larger x. */
    RIGHT(Axis.X, 1),
    /** Towards smaller y. */
    FRONT(Axis.Y, -1),
    /** Towards larger y. */
    REAR(Axis.Y, 1),
    /** Towards smaller z. */
    DOWN(Axis.Z, -1),
    /** Towards larger z. */
    UP(Axis.Z, 1);

    private final Axis axis;
    private final int sign;

    Heading(Axis axis, int sign) {
        this.axis = axis;
        this.sign = sign;
    }

    /** The axis it runs along. */
    public Axis axis() {
        return axis;
    }

    /** +1 or −1. */
    public int sign() {
        return sign;
    }
}

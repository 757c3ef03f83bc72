package loopwright.catalog.basis;

/** An axis of the chassis frame: x to the right, y from front to rear, z up (seen from the front). */
public enum Axis {
    /** To the right. */
    X,
    /** From front to rear. */
    Y,
    /** Up. */
    Z
}

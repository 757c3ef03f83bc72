package loopwright.quantity;

/** How a dimension is known, from weakest to strongest. */
public enum Known {
    /** Not known at all: it has to be measured before anything that depends on it can be called a fit. */
    UNKNOWN,
    /** A guess from parts of the same kind. */
    ASSUMED,
    /** The maker's sheet or a published standard says so. */
    DATASHEET,
    /** Read off the part with an instrument. */
    MEASURED
}

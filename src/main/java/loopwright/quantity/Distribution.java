package loopwright.quantity;

/** How the true value of a dimension is spread over its ±. */
public enum Distribution {
    /** Most likely in the middle: the ± is two standard deviations. Common practice, no source. */
    NORMAL,
    /** Evenly spread within the ±, and never outside it: a hole somewhere in its slot, a rounded reading. */
    RECTANGULAR
}

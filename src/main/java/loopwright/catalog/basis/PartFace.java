package loopwright.catalog.basis;

/** A face of a part in its own frame, by the end of the axis it lies at. */
public enum PartFace {
    /** Where length starts. */
    LENGTH_LOW,
    /** The far end of its length. */
    LENGTH_HIGH,
    /** Where width starts. */
    WIDTH_LOW,
    /** The far end of its width. */
    WIDTH_HIGH,
    /** Where height starts. */
    HEIGHT_LOW,
    /** The far end of its height. */
    HEIGHT_HIGH
}

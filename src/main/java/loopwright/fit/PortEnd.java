package loopwright.fit;

/** Which end of its mount a radiator's ports are at. */
public enum PortEnd {
    /** The end at the smaller coordinate. */
    LOW,
    /** The end at the larger coordinate. */
    HIGH
}

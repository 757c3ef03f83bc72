package loopwright.catalog.part;

/** Screw threads of the trade; sizes in {@code shared/standards.yaml}. */
public enum ScrewThread {
    /** Metric coarse, 0.5 pitch. */
    M3,
    /** Metric coarse, 0.7 pitch. */
    M4,
    /** Unified coarse, 32 threads an inch. */
    UNC_6_32
}

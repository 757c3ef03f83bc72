package loopwright.catalog.part;

/** Screw threads of the trade; sizes in {@code shared/standards.yaml}. */
public enum ScrewThread {
    /** Metric coarse, 0.5 pitch. */
    M3,
    /** Metric coarse, 0.7 pitch. */
    M4,
    /** Unified coarse, 32 threads an inch. */
    UNC_6_32,
    /** Metric coarse, 0.6 pitch: nothing here has it, but it starts in a 6-32 hole. */
    M3_5,
    /** Coarse, cuts its own way into the plastic of a fan's frame. */
    FAN
}

package loopwright.catalog.standard;

/** Stages of the work on a machine once its parts are chosen, in the order in which they can first begin. */
public enum WorkStage {
    /** Take the case apart, label its screws. */
    STRIP,
    /** Measure the bare case and the real parts. */
    MEASURE,
    /** Put everything in, dry; then take it out again. */
    DRY_FIT,
    /** Draw cut lines and holes from the datum edges. */
    MARK,
    /** Cut, drill, take out what is riveted. */
    CUT,
    /** File edges round, take swarf away. */
    DEBURR,
    /** Put everything in again, with screws of their final length; then take it out again. */
    SECOND_DRY_FIT,
    /** Spray a test piece with the same coats, as a trial of how they hold. */
    TEST_PIECE,
    /** Wash, degrease, key, mask. */
    PREP,
    /** Primer. */
    PRIME,
    /** Colour. */
    COLOUR,
    /** Clear coat. */
    CLEAR,
    /** Nobody works: the paint hardens. */
    CURE,
    /** Put the machine together. */
    ASSEMBLE,
    /** Cut and fit tube. */
    PLUMB,
    /** Hold air in the closed loop. */
    AIR_TEST,
    /** Fill and bleed. */
    FILL,
    /** Run the pump alone and look for drops. */
    LEAK_WATCH,
    /** Full load, fans and pump set. */
    BURN_IN,
    /** Clean, photograph, pack. */
    CLEAN,
    /** Hand it over with its sheets. */
    HANDOVER
}

package loopwright.workshop.schedule;

/** Why one job comes before another. */
public enum WorkRule {
    /** Stages follow each other. */
    STAGES_FOLLOW("stages follow each other"),
    /** What is in the way comes out before anything else is marked or cut: it is measured again then. */
    TAKE_OUT_FIRST("what is taken out goes before other cuts"),
    /** A mod that another needs is done before it. */
    NEEDED_MOD_FIRST("a mod that another needs goes first"),
    /** Every cut is fitted before anything is painted. */
    SECOND_FIT_AFTER_CUTS("the second dry fit has every cut"),
    /** A whole dry fit before any paint. */
    DRY_FIT_BEFORE_PAINT("a whole dry fit before any paint"),
    /** Every cut of a part is made before that part is painted. */
    CUT_BEFORE_OWN_PAINT("every cut before its own part's paint"),
    /** Nothing of the case is cut while electronics are in it. */
    NO_CUT_WITH_ELECTRONICS("no cut with electronics inside"),
    /** A test piece with the same coats has held before anything is painted. */
    TEST_PIECE_BEFORE_PAINT("the test piece holds before anything is painted"),
    /** A coat over a coat that is not sanded goes on inside the recoat window or after the lock-out time. */
    COATS_AT_ONCE("a coat inside the recoat window, or after the lock-out time"),
    /** Paint is hard before parts are bolted to it. */
    PAINT_HARD_BEFORE_ASSEMBLY("paint is hard before it is bolted to"),
    /** A mod decided after the build waits for the machine to run. */
    DECIDED_LATE("decided after the build");

    private final String statement;

    WorkRule(String statement) {
        this.statement = statement;
    }

    /** The rule in a few words. */
    public String statement() {
        return statement;
    }
}

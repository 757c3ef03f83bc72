package loopwright.cli;

/** The exit code of a command that answers for one chassis after the other. */
final class Outcome {

    private boolean anything;
    private boolean whole = true;

    /** Notes one chassis: whether there was something to show, and whether nothing can be missing. */
    void note(boolean some, boolean complete) {
        anything |= some;
        whole &= complete;
    }

    int code() {
        if (!whole) {
            return ExitCode.INCOMPLETE;
        }
        return anything ? ExitCode.ANSWERED : ExitCode.NO;
    }
}

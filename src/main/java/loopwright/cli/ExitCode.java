package loopwright.cli;

/** How a command ended, as the shell sees it. */
final class ExitCode {

    /** Answered. */
    static final int ANSWERED = 0;

    /** Answered, and the answer is no. */
    static final int NO = 1;

    /** The command line is wrong. */
    static final int COMMAND_LINE = 2;

    /** Input files are wrong. */
    static final int INPUT = 3;

    /** Stopped before complete. */
    static final int INCOMPLETE = 4;

    /** The output cannot be written. */
    static final int OUTPUT = 5;

    /** Our own bug. */
    static final int BUG = 70;

    private ExitCode() {}
}

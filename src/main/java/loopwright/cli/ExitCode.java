package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;

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

    /** Every code and what it means, as the help lists it. */
    static Map<String, String> inWords() {
        Map<String, String> out = new LinkedHashMap<>();
        out.put(" " + ANSWERED, "answered");
        out.put(" " + NO, "answered, and the answer is no");
        out.put(" " + COMMAND_LINE, "the command line is wrong");
        out.put(" " + INPUT, "input files are wrong");
        out.put(" " + INCOMPLETE, "stopped before complete: a limit, a time, Ctrl-C");
        out.put(" " + OUTPUT, "the output cannot be written");
        out.put("" + BUG, "our own bug");
        return out;
    }
}

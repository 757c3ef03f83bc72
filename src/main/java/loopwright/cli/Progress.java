package loopwright.cli;

import java.io.PrintWriter;
import loopwright.answer.Halt;

/** Tells on a terminal's error stream that something takes longer than a second; elsewhere it is silent. */
final class Progress {

    private static final long SECOND_NS = 1_000_000_000L;

    private final PrintWriter err;
    private final String what;
    private final boolean shown;
    private final long startedNs = System.nanoTime();
    private long toldS;

    private Progress(PrintWriter err, String what, boolean shown) {
        this.err = err;
        this.what = what;
        this.shown = shown;
    }

    /** Progress of one thing. */
    static Progress on(PrintWriter err, String what) {
        return new Progress(err, what, isTerminal());
    }

    /** From JDK 22 there is a console without a terminal too; a terminal then still has a type. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean isTerminal() {
        return System.console() != null && System.getenv("TERM") != null && System.getenv("CI") == null;
    }

    /** A halt that also keeps the line on the terminal up to date. */
    Halt around(Halt halt) {
        return () -> {
            tick();
            return halt.because();
        };
    }

    private void tick() {
        long seconds = (System.nanoTime() - startedNs) / SECOND_NS;
        if (shown && seconds > toldS) {
            toldS = seconds;
            err.print("\r" + what + ": " + seconds + " s, Ctrl-C shows what is found so far");
            err.flush();
        }
    }

    /** Clears the line. */
    void end() {
        if (toldS > 0) {
            err.print("\r\u001b[K");
            err.flush();
            toldS = 0;
        }
    }
}

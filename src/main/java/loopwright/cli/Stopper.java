package loopwright.cli;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import loopwright.answer.Halt;

/**
 * Stops a question when its time is up or the user presses Ctrl-C.
 *
 * <p>On Ctrl-C the process is held back until the answer so far is printed, and then ends with the command's own code.
 */
final class Stopper implements Halt {

    /** How long a process that is told to end waits for the answer so far, seconds. */
    private static final int PATIENCE_S = 60;

    private static volatile boolean ending;
    private static volatile int exitCode = ExitCode.BUG;
    private static final CountDownLatch DONE = new CountDownLatch(1);

    private final long startedNs = System.nanoTime();
    private final Optional<Double> seconds;

    private Stopper(Optional<Double> seconds) {
        this.seconds = seconds;
    }

    static Stopper start(Optional<Double> seconds) {
        return new Stopper(seconds);
    }

    /** Makes Ctrl-C ask for the answer so far. For the process's own run, once. */
    static void catchInterrupts() {
        Runtime.getRuntime().addShutdownHook(new Thread(Stopper::holdBack, "answer so far"));
    }

    /** The answer is out: the process may end. */
    static int done(int code) {
        exitCode = code;
        DONE.countDown();
        return code;
    }

    private static void holdBack() {
        ending = true;
        try {
            if (DONE.await(PATIENCE_S, TimeUnit.SECONDS)) {
                Runtime.getRuntime().halt(exitCode);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public Optional<String> because() {
        if (ending) {
            return Optional.of("interrupted");
        }
        return seconds.filter(s -> System.nanoTime() - startedNs > s * 1e9)
                .map(s -> "time limit of "
                        + BigDecimal.valueOf(s).stripTrailingZeros().toPlainString() + " s");
    }
}

package loopwright.fit;

import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Knows when a search has to stop, and why. */
final class Stop {

    private final FitWish wish;
    private final BooleanSupplier interrupted;
    private final long startedNs = System.nanoTime();
    private Optional<String> because = Optional.empty();

    Stop(FitWish wish, BooleanSupplier interrupted) {
        this.wish = wish;
        this.interrupted = interrupted;
    }

    /** Whether to stop now, with so many layouts found. */
    boolean now(int layouts) {
        if (because.isPresent()) {
            return true;
        }
        if (interrupted.getAsBoolean()) {
            because = Optional.of("interrupted");
        } else if (wish.layoutLimit().isPresent()
                && layouts >= wish.layoutLimit().getAsInt()) {
            because = Optional.of("limit of " + wish.layoutLimit().getAsInt() + " layouts");
        } else if (wish.timeLimitMs().isPresent()
                && System.nanoTime() - startedNs > wish.timeLimitMs().getAsLong() * 1_000_000L) {
            because = Optional.of("time limit of " + wish.timeLimitMs().getAsLong() / 1000.0 + " s");
        }
        return because.isPresent();
    }

    Optional<String> because() {
        return because;
    }
}

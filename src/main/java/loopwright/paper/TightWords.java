package loopwright.paper;

import java.util.Optional;
import loopwright.fit.FitCase;
import loopwright.fit.Strictness;

/** What is said where a brief refuses tight places. */
final class TightWords {

    private TightWords() {}

    /** Said of an answer about what fits. */
    static Optional<String> ofFits(FitCase fitCase) {
        return refused(
                fitCase,
                "The brief refuses tight places: wherever things come close, at least 2 mm are left, and"
                        + " something even in the worst case.");
    }

    /** Said of an answer that tells how many millimetres are lacking. */
    static Optional<String> ofShortfalls(FitCase fitCase) {
        return refused(
                fitCase,
                "The brief refuses tight places: what is short is short of a place with at least 2 mm to"
                        + " spare, and something even in the worst case.");
    }

    private static Optional<String> refused(FitCase fitCase, String words) {
        return fitCase.strictness() == Strictness.NO_TIGHT ? Optional.of(words) : Optional.empty();
    }
}

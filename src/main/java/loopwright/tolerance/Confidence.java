package loopwright.tolerance;

import java.util.Optional;
import java.util.OptionalDouble;

/** Whether something is as sure to fit as a brief asks for. */
public final class Confidence {

    private static final double PERCENT = 100;

    /** Far below anything told: decimal fractions in binary. */
    private static final double ROUNDING = 1e-9;

    private Confidence() {}

    /**
     * Whether it is less sure than that; what is not known is less sure than anything.
     *
     * @param probability 0 to 1; what is told of it, three decimals, is compared
     * @param percent what is asked for; absent, nothing is too little
     */
    public static boolean isBelow(OptionalDouble probability, Optional<Double> percent) {
        return percent.map(
                        p -> probability.isEmpty() || Chance.told(probability.getAsDouble()) * PERCENT < p - ROUNDING)
                .orElse(false);
    }
}

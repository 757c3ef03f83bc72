package loopwright.tolerance;

import java.util.Locale;

/** How likely something fits, as a word. The borders are our own choice: nobody has set any. */
public enum Chance {
    /** 99 % or more. */
    SURE(0.99),
    /** 80 % or more. */
    LIKELY(0.80),
    /** 40 % or more. */
    TOSS_UP(0.40),
    /** Less than that. */
    UNLIKELY(0);

    private final double from;

    Chance(double from) {
        this.from = from;
    }

    /**
     * The word for a probability.
     *
     * @param probability 0 to 1
     */
    public static Chance of(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("a probability is 0 to 1 but was " + probability);
        }
        for (Chance chance : values()) {
            if (probability >= chance.from) {
                return chance;
            }
        }
        return UNLIKELY;
    }

    /** A probability as it is told: three decimals, of which the word is said. */
    public static double told(double probability) {
        return Math.round(probability * THOUSAND) / THOUSAND;
    }

    private static final double THOUSAND = 1000;

    /** {@code toss-up}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

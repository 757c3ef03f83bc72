package loopwright.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Conversion between millimetres as people write them and integer hundredths of a millimetre.
 *
 * <p>Exact both ways: a text with more than two decimals is refused, never rounded.
 */
public final class Hundredths {

    /** Hundredths in one millimetre, by definition. */
    public static final int PER_MM = 100;

    private Hundredths() {}

    /**
     * Returns the hundredths of a length in whole millimetres.
     *
     * @throws ArithmeticException if the result does not fit an int
     */
    public static int ofMm(int mm) {
        return Math.multiplyExact(mm, PER_MM);
    }

    /**
     * Returns the hundredths of a decimal number of millimetres.
     *
     * @throws ArithmeticException if there are more than two decimals, or the result does not fit an int
     */
    public static int ofMm(BigDecimal mm) {
        return mm.movePointRight(2).setScale(0, RoundingMode.UNNECESSARY).intValueExact();
    }

    /** Returns the length in millimetres, exact, with two decimals. */
    public static BigDecimal toMm(int hmm) {
        return BigDecimal.valueOf(hmm, 2);
    }

    /** Returns the length in metres, for physics. */
    public static double toM(int hmm) {
        return hmm / 100_000.0;
    }

    /** Returns the length in millimetres as a screen shows it: one decimal, or two where one would not be exact. */
    public static String text(int hmm) {
        BigDecimal mm = toMm(hmm);
        return (hmm % 10 == 0 ? mm.setScale(1, RoundingMode.UNNECESSARY) : mm).toPlainString();
    }
}

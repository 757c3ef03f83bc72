package loopwright.loop.exchange;

/**
 * Share of a straight fin's ideal heat that it passes, as it is cooler at its tip than at its foot.
 *
 * <p><b>Units.</b> Dimensionless: m·L, with m = √(2h/(k·t)) of a thin fin and L from its foot to where no heat flows.
 *
 * <p><b>Valid for</b> any m·L of 0 and more: from 1 down to 0.
 *
 * <p><b>Accuracy.</b> Exact for one-dimensional conduction and an even transfer coefficient.
 *
 * <p><b>Source.</b> [IncroperaDeWitt2007] section 3.6: tanh(m·L)/(m·L).
 */
public final class FinEfficiency {

    /** m·L below which 1 − (m·L)²/3 is exact to the last digit. */
    private static final double SHORT = 1e-4;

    private FinEfficiency() {}

    /**
     * Returns tanh(mL)/mL.
     *
     * @param mL at least 0
     * @throws IllegalArgumentException if it is below 0, or NaN
     */
    public static double straight(double mL) {
        if (!(mL >= 0)) {
            throw new IllegalArgumentException("mL must be at least 0 but was " + mL);
        }
        return mL < SHORT ? 1 - mL * mL / 3 : StrictMath.tanh(mL) / mL;
    }
}

package loopwright.loop.exchange;

/**
 * Effectiveness of a heat exchanger whose two flows cross and neither of which mixes.
 *
 * <p><b>Units.</b> Dimensionless.
 *
 * <p><b>Valid for</b> transfer units of 0 and more; above 300 the value at 300 holds, which is low by at most 3.3 % (equal
 * capacity rates) and by
 * less than 2e-5 up to a ratio of 0.75. Capacity ratios from 0 to 1.
 *
 * <p><b>Accuracy.</b> The exact solution; 1e-9 for transfer units from 0 to 20 (checked in CrossflowTest). Every term is
 * positive and small ones are added first, so nothing cancels, also towards no transfer and towards one boiling side.
 *
 * <p><b>Source.</b> [Mason1954], as a series of products of two Poisson tails.
 */
public final class Crossflow {

    /** Transfer units beyond which the value is held: far past any exchanger, and no overflow. */
    private static final double TRANSFER_UNITS_MAX = 300;

    /** Terms below this are left out; the sum of all is at least 1. */
    private static final double NEGLIGIBLE = 1e-18;

    /** Transfer units of the smaller capacity below which one side does not change its temperature at all. */
    private static final double VANISHING = 1e-16;

    /** Halvings that take the interval of transfer units below the spacing of doubles. */
    private static final int HALVINGS = 100;

    private Crossflow() {}

    /**
     * Returns the heat exchanged over the most that could be.
     *
     * @param ntu transfer units: conductance over the smaller capacity rate, at least 0
     * @param capacityRatio smaller capacity rate over the larger, in [0, 1]
     * @throws IllegalArgumentException if an argument is outside its range, or NaN
     */
    public static double effectiveness(double ntu, double capacityRatio) {
        if (!(ntu >= 0)) {
            throw new IllegalArgumentException("ntu must be at least 0 but was " + ntu);
        }
        if (!(capacityRatio >= 0 && capacityRatio <= 1)) {
            throw new IllegalArgumentException("capacityRatio must be in [0, 1] but was " + capacityRatio);
        }
        double a = Math.min(ntu, TRANSFER_UNITS_MAX);
        double b = capacityRatio * a;
        return b < VANISHING ? -StrictMath.expm1(-a) : series(a, b);
    }

    /**
     * ε = Σ T(n, a)·T(n, b)/b over n ≥ 0, with the Poisson tails T(n, x) = e^−x·Σ x^m/m! over m > n.
     *
     * <p>Forward to the last term that counts, then back, adding the tails up from their small end. The terms in b start at
     * m = 1 and carry the 1/b.
     */
    private static double series(double a, double b) {
        int lastA = 0;
        double termA = StrictMath.exp(-a);
        double floorA = NEGLIGIBLE * termA;
        while (lastA < a || termA > floorA) {
            lastA++;
            termA *= a / lastA;
        }
        int lastB = 1;
        double termB = StrictMath.exp(-b);
        double floorB = NEGLIGIBLE * termB;
        while (lastB < b || termB > floorB) {
            lastB++;
            termB *= b / lastB;
        }
        double perA = 1 / a;
        double perB = 1 / b;
        double tailA = 0;
        for (int m = lastA; m > lastB; m--) {
            tailA += termA;
            termA *= m * perA;
        }
        double tailB = 0;
        double sum = 0;
        for (int m = lastB; m >= 1; m--) {
            if (m <= lastA) {
                tailA += termA;
                termA *= m * perA;
            }
            tailB += termB;
            termB *= m * perB;
            sum += tailA * tailB;
        }
        return Math.min(1, sum);
    }

    /**
     * Returns the transfer units that give an effectiveness.
     *
     * @param effectiveness in [0, value at 300 transfer units), which is above 0.96 at any ratio
     * @param capacityRatio in [0, 1]
     * @throws IllegalArgumentException if an argument is outside its range, or NaN
     */
    static double transferUnits(double effectiveness, double capacityRatio) {
        if (!(effectiveness >= 0 && effectiveness < effectiveness(TRANSFER_UNITS_MAX, capacityRatio))) {
            throw new IllegalArgumentException(
                    "no exchanger has the effectiveness " + effectiveness + " at capacity ratio " + capacityRatio);
        }
        double low = 0;
        double high = TRANSFER_UNITS_MAX;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (effectiveness(middle, capacityRatio) < effectiveness) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}

package loopwright.loop.exchange;

/**
 * Developed laminar flow in a rectangular duct: friction and heat transfer on its hydraulic diameter.
 *
 * <p><b>Units.</b> Dimensionless. Friction is Fanning's; Darcy's is four times as much.
 *
 * <p><b>Valid for</b> aspects (short side over long side) above 0 to 1; 0 stands for parallel plates. Flow and temperature
 * fully developed: in a short duct both are larger.
 *
 * <p><b>Accuracy.</b> Friction: exact, the series is summed until nothing changes. Nusselt numbers: within 0.1 % of a numerical
 * solution at a constant heat flow along the duct, within 0.2 % at constant wall temperature (checked in
 * RectangularDuctTest).
 *
 * <p><b>Source.</b> [ShahLondon1978] eqs. 341 and following.
 */
public final class RectangularDuct {

    /** Friction of parallel plates, exact. */
    private static final double PLATES = 24;

    /** 192/π⁵, of the series. */
    private static final double SERIES = 192 / StrictMath.pow(Math.PI, 5);

    /** Last odd number of the series: its terms fall with the fifth power, 999⁻⁵ is 1e-15. */
    private static final int ODD_MAX = 999;

    private RectangularDuct() {}

    /**
     * Returns Fanning's friction factor times the Reynolds number.
     *
     * @param aspect short side over long side, in [0, 1]
     * @throws IllegalArgumentException if the aspect is outside its range, or NaN
     */
    public static double frictionReynolds(double aspect) {
        check(aspect);
        if (aspect == 0) { // exactly: parallel plates, where the series has no argument
            return PLATES;
        }
        double sum = 0;
        for (int n = ODD_MAX; n >= 1; n -= 2) {
            sum += StrictMath.tanh(n * Math.PI / (2 * aspect)) / StrictMath.pow(n, 5);
        }
        double around = 1 + aspect;
        return PLATES / (around * around * (1 - SERIES * aspect * sum));
    }

    /**
     * Returns the Nusselt number when heat flows evenly along the duct and the wall is one temperature around it (H1).
     *
     * @param aspect short side over long side, in [0, 1]
     * @throws IllegalArgumentException if the aspect is outside its range, or NaN
     */
    public static double nusseltEvenHeat(double aspect) {
        check(aspect);
        double inner = -2.4765 + aspect * (1.0578 - 0.1861 * aspect);
        return 8.235 * (1 + aspect * (-2.0421 + aspect * (3.0853 + aspect * inner)));
    }

    /**
     * Returns the Nusselt number when the wall is one temperature everywhere (T); the smaller of the two.
     *
     * @param aspect short side over long side, in [0, 1]
     * @throws IllegalArgumentException if the aspect is outside its range, or NaN
     */
    public static double nusseltEvenWall(double aspect) {
        check(aspect);
        double inner = -5.119 + aspect * (2.702 - 0.548 * aspect);
        return 7.541 * (1 + aspect * (-2.610 + aspect * (4.970 + aspect * inner)));
    }

    private static void check(double aspect) {
        if (!(aspect >= 0 && aspect <= 1)) {
            throw new IllegalArgumentException("aspect must be in [0, 1] but was " + aspect);
        }
    }
}

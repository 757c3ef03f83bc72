package loopwright.loop;

/**
 * Pressure loss of a thin plate with sharp-edged holes: grille, perforated panel, filter.
 *
 * <p><b>Units.</b> Dimensionless: the coefficient refers to the dynamic pressure in front of the plate, on its whole face.
 *
 * <p><b>Valid for</b> hole Reynolds numbers above 1e5. A grille with 3 mm holes at 2 m/s has about 400: there the true loss
 * is larger, so a dense grille is flattered. What the estimate says about two grilles is right in order.
 *
 * <p><b>Accuracy.</b> ±16 % against an independent compilation (Blevins, square-edged screens), checked in ThinPlateTest.
 *
 * <p><b>Source.</b> [Idelchik1994], diagrams 4-14 and 8-1.
 */
final class ThinPlate {

    /** Contraction coefficient of a sharp edge, dimensionless, [Idelchik1994] diagram 4-14. */
    private static final double CONTRACTION = 0.707;

    /** Exponent of the closed share, dimensionless, [Idelchik1994] diagram 4-14. */
    private static final double CLOSED_EXPONENT = 0.375;

    private ThinPlate() {}

    /**
     * Returns the loss coefficient; 0 for no plate at all, growing without limit towards a closed one.
     *
     * @param openShare open area over face area, in (0, 1]
     * @throws IllegalArgumentException if the share is outside its range, or NaN
     */
    static double lossCoefficient(double openShare) {
        if (!(openShare > 0 && openShare <= 1)) {
            throw new IllegalArgumentException("openShare must be in (0, 1] but was " + openShare);
        }
        double closed = 1 - openShare;
        double root = CONTRACTION * StrictMath.pow(closed, CLOSED_EXPONENT) + closed;
        return root * root / (openShare * openShare);
    }
}

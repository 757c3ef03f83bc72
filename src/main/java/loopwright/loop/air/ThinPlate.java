package loopwright.loop.air;

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

    /**
     * Returns what slow air loses in the holes besides, Pa for each m/s on the face: Δp = 15·μ·v/(f·d).
     *
     * <p>That is ζ = 30/(f²·Re) of hole Reynolds numbers below 10, [EC1998]. Added to {@link #lossCoefficient}, it carries the
     * loss over the gap between Re 10 and 1e5, for which no formula is at hand; there the sum is a lower figure.
     *
     * @param openShare open area over face area, in (0, 1]
     * @param holeM width of a hole, above 0
     */
    static double slowLossPaSPerM(double openShare, double holeM, double viscosityPaS) {
        if (!(openShare > 0 && openShare <= 1 && holeM > 0)) {
            throw new IllegalArgumentException(
                    "a plate has holes: open share " + openShare + ", hole width " + holeM + " m");
        }
        return SLOW * viscosityPaS / (2 * openShare * holeM);
    }

    /** ζ·f²·Re of slow flow through a thin plate, dimensionless, [EC1998]. */
    private static final double SLOW = 30;
}

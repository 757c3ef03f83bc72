package loopwright.loop.exchange;

/**
 * Heat transfer of coolant in a flat tube: laminar, turbulent, and the gap between.
 *
 * <p><b>Units.</b> Dimensionless, on the hydraulic diameter.
 *
 * <p><b>Valid for</b> any Reynolds number to 5e6 and Prandtl numbers from 0.5 to 2000. Below Re 2300 developed laminar flow
 * with a wall of one temperature: the smaller of the two laminar values, so that the coolant's side is never flattered. From
 * Re 4000 turbulent; between the two a straight line in the Reynolds number, which never falls. Entrance effects are left
 * out: in short tubes the true value is larger.
 *
 * <p><b>Accuracy.</b> Laminar 0.2 % of the developed value; turbulent ±10 % of the data ([Gnielinski1976]); between, no claim.
 *
 * <p><b>Source.</b> [ShahLondon1978]; [Gnielinski1976] with the friction of [Petukhov1970]; the straight line as in
 * [Gnielinski2013].
 */
final class FlatTube {

    /** End of laminar flow, dimensionless, [Gnielinski2013]. */
    private static final double RE_LAMINAR_MAX = 2300;

    /** Onset of turbulent flow, dimensionless, [Gnielinski2013]. */
    private static final double RE_TURBULENT_MIN = 4000;

    private final double laminar;

    /**
     * A tube.
     *
     * @param aspect inner short side over inner long side, in [0, 1]
     */
    FlatTube(double aspect) {
        laminar = RectangularDuct.nusseltEvenWall(aspect);
    }

    /**
     * Returns the Nusselt number.
     *
     * @param reynolds at least 0, at most 5e6
     * @param prandtl in [0.5, 2000]
     * @throws IllegalArgumentException if an argument is outside its range, or NaN
     */
    double nusselt(double reynolds, double prandtl) {
        if (!(reynolds >= 0 && reynolds <= 5e6)) {
            throw new IllegalArgumentException("reynolds must be in [0, 5e6] but was " + reynolds);
        }
        if (!(prandtl >= 0.5 && prandtl <= 2000)) {
            throw new IllegalArgumentException("prandtl must be in [0.5, 2000] but was " + prandtl);
        }
        if (reynolds <= RE_LAMINAR_MAX) {
            return laminar;
        }
        if (reynolds >= RE_TURBULENT_MIN) {
            return turbulent(reynolds, prandtl);
        }
        double share = (reynolds - RE_LAMINAR_MAX) / (RE_TURBULENT_MIN - RE_LAMINAR_MAX);
        return (1 - share) * laminar + share * turbulent(RE_TURBULENT_MIN, prandtl);
    }

    /** [Gnielinski1976] with Darcy's friction factor (0.79·ln Re − 1.64)^−2 of [Petukhov1970]. */
    private static double turbulent(double reynolds, double prandtl) {
        double root = 0.79 * StrictMath.log(reynolds) - 1.64;
        double eighth = 1 / (8 * root * root);
        double core = 1 + 12.7 * Math.sqrt(eighth) * (StrictMath.pow(prandtl, 2.0 / 3) - 1);
        return eighth * (reynolds - 1000) * prandtl / core;
    }
}

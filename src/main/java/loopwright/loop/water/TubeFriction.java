package loopwright.loop.water;

/**
 * Darcy friction factor of a liquid in a round straight tube: laminar, turbulent, and the gap between.
 *
 * <p><b>Units.</b> Everything is dimensionless; roughness is ε/D.
 *
 * <p><b>Valid for</b> Re above 0 to 1e8 and ε/D from 0 to 0.05. Between Re 2300 and 4000 flow is now laminar, now
 * turbulent, and no formula is reliable: there the factor goes in a straight line over Re from the laminar one at 2300 to
 * the turbulent one at 4000. So it rises, and pressure drop (f·Re²) rises strictly with flow at every roughness.
 *
 * <p><b>Accuracy.</b> Laminar: exact. Turbulent: the root of the Colebrook–White equation to 1e-13 (checked in
 * TubeFrictionTest to 1e-10); the equation itself is good to about ±5 % for smooth tubes, worse in the gap.
 *
 * <p><b>Source.</b> [Colebrook1939]; the limits 2300 and 4000 are [White2016] ch. 6, the line across the gap is ours.
 */
public final class TubeFriction {

    /** Last Reynolds number of laminar flow, dimensionless, [White2016] ch. 6. */
    static final double RE_LAMINAR_MAX = 2300;

    /** First Reynolds number of turbulent flow, dimensionless, [White2016] ch. 6. */
    static final double RE_TURBULENT_MIN = 4000;

    /** Largest Reynolds number taken, dimensionless: end of the usual chart. */
    private static final double RE_MAX = 1e8;

    /** Largest relative roughness taken, dimensionless: end of the usual chart. */
    static final double ROUGHNESS_MAX = 0.05;

    /** Friction factor times Reynolds number of laminar flow, dimensionless, exact (Hagen–Poiseuille). */
    static final double LAMINAR = 64;

    /** Divisor of the roughness, dimensionless, [Colebrook1939]. */
    private static final double ROUGH_DIVISOR = 3.7;

    /** Factor of the smooth part, dimensionless, [Colebrook1939]. */
    private static final double SMOOTH_FACTOR = 2.51;

    /** Twice the common logarithm, as a factor of the natural one. */
    private static final double TWO_LOG10 = 2 / StrictMath.log(10);

    /** Twice the common logarithm, as a factor of the binary one. */
    private static final double TWO_LOG10_OF_2 = 2 * StrictMath.log10(2);

    /** A usual 1/√f, from which the start is worked out, dimensionless: that of a smooth tube at about Re 14 000. */
    private static final double USUAL = 6;

    /** Step after which the next one, about a thousandth of its cube, is below rounding, dimensionless. */
    private static final double LAST_STEP = 1e-4;

    /** Most steps; two are usual, three the most seen. */
    private static final int STEPS_MAX = 20;

    private TubeFriction() {}

    /**
     * Returns the Darcy friction factor (four times Fanning's).
     *
     * @param reynolds inertial over viscous forces, in (0, 1e8]
     * @param relRoughness wall roughness over inner diameter, in [0, 0.05]
     * @throws IllegalArgumentException if an argument is outside its range, or NaN
     */
    public static double darcy(double reynolds, double relRoughness) {
        if (!(reynolds > 0 && reynolds <= RE_MAX)) {
            throw new IllegalArgumentException("reynolds must be in (0, 1e8] but was " + reynolds);
        }
        if (!(relRoughness >= 0 && relRoughness <= ROUGHNESS_MAX)) {
            throw new IllegalArgumentException("relRoughness must be in [0, 0.05] but was " + relRoughness);
        }
        if (reynolds <= RE_LAMINAR_MAX) {
            return LAMINAR / reynolds;
        }
        if (reynolds >= RE_TURBULENT_MIN) {
            return turbulent(reynolds, relRoughness);
        }
        double share = (reynolds - RE_LAMINAR_MAX) / (RE_TURBULENT_MIN - RE_LAMINAR_MAX);
        return (1 - share) * (LAMINAR / RE_LAMINAR_MAX) + share * turbulent(RE_TURBULENT_MIN, relRoughness);
    }

    /**
     * The root of 1/√f = −2·log10(ε/D/3.7 + 2.51/(Re·√f)), [Colebrook1939].
     *
     * <p>With x = 1/√f it is the zero of g(x) = x + 2·log10(a + b·x), which rises and bends down: Halley's steps, which are
     * Newton's with the bend allowed for, cost one logarithm each.
     */
    private static double turbulent(double reynolds, double relRoughness) {
        double a = relRoughness / ROUGH_DIVISOR;
        double b = SMOOTH_FACTOR / reynolds;
        double x = -TWO_LOG10_OF_2 * roughLog2(a + b * USUAL);
        for (int i = 0; i < STEPS_MAX; i++) {
            double inside = a + b * x;
            double value = x + TWO_LOG10 * StrictMath.log(inside);
            double relSlope = b / inside;
            double slope = 1 + TWO_LOG10 * relSlope;
            double bend = -TWO_LOG10 * relSlope * relSlope;
            double step = value / (slope - value * bend / (2 * slope));
            x -= step;
            if (Math.abs(step) < LAST_STEP) {
                return 1 / (x * x);
            }
        }
        throw new IllegalStateException("friction factor not found in " + STEPS_MAX + " steps: reynolds " + reynolds
                + ", relRoughness " + relRoughness + ", last 1/sqrt(f) " + x);
    }

    /** The binary logarithm, up to 0.09 too small: the exponent, and a straight line over the mantissa. */
    private static double roughLog2(double value) {
        int exponent = Math.getExponent(value);
        return exponent + Math.scalb(value, -exponent) - 1;
    }
}

package loopwright.loop.fluid;

/**
 * Liquid water at 0.1 MPa.
 *
 * <p><b>Units.</b> Temperature in °C; results in SI.
 *
 * <p><b>Valid for</b> 10 to 70 °C. From 0 to 100 °C the functions are smooth and positive and still follow the source;
 * beyond, the value of the nearer end holds. Pressure is ignored: 0.1 MPa more changes the density by 0.005 %.
 *
 * <p><b>Accuracy.</b> Fits to the source, worst relative deviation from 10 to 70 °C / from 0 to 99.5 °C: density
 * 1.4e-6 / 1.7e-6, heat capacity 1.4e-5 / 1.9e-5, viscosity 5.5e-5 / 6.8e-5, conductivity 2.0e-4 / 2.5e-4. The source
 * itself is uncertain by about 1 % in viscosity and 0.7 % in conductivity (from memory). Checked in WaterTest; between its
 * points in WaterAgainstIf97Test.
 *
 * <p><b>Source.</b> Density and heat capacity [IAPWS95], viscosity [IAPWSR12], conductivity [IAPWSR15]. The polynomials are our
 * own least-squares fits in (t − 50 °C)/50 K, at Chebyshev nodes from 0.01 to 99.55 °C.
 */
public final class Water implements Liquid {

    /** Centre of the fits, °C. */
    private static final double CENTRE_C = 50;

    /** Half width of the fits, K. */
    private static final double HALF_WIDTH_K = 50;

    /** Freezing point at 0.1 MPa, °C; by definition of the scale to 0.003 K. */
    private static final double FREEZING_C = 0;

    /** Density, kg/m³; fit to [IAPWS95]. */
    private static final Polynomial DENSITY =
            new Polynomial(988.0348, -22.60767, -8.208957, 1.523631, -0.5692423, 0.3352748, -0.1612379);

    /** Heat capacity, J/(kg·K); fit to [IAPWS95]. */
    private static final Polynomial HEAT_CAPACITY =
            new Polynomial(4181.33, 13.8608, 21.0664, -5.0948, 9.4137, -10.5766, 5.74959);

    /** Natural logarithm of the viscosity in Pa·s; fit to [IAPWSR12]. */
    private static final Polynomial LN_VISCOSITY =
            new Polynomial(-7.51196, -0.839716, 0.227903, -0.0682468, 0.0264885, -0.0172295, 0.00774975);

    /** Conductivity, W/(m·K); fit to [IAPWSR15]. */
    private static final Polynomial CONDUCTIVITY =
            new Polynomial(0.640593, 0.0557184, -0.0214224, 0.00493308, -0.00273114);

    /** Water, with nothing in it that changes these properties. */
    public Water() {}

    @Override
    public double densityKgPerM3(double temperatureC) {
        return DENSITY.at(scaled(temperatureC));
    }

    @Override
    public double heatCapacityJPerKgK(double temperatureC) {
        return HEAT_CAPACITY.at(scaled(temperatureC));
    }

    @Override
    public double viscosityPaS(double temperatureC) {
        return StrictMath.exp(LN_VISCOSITY.at(scaled(temperatureC)));
    }

    @Override
    public double conductivityWPerMK(double temperatureC) {
        return CONDUCTIVITY.at(scaled(temperatureC));
    }

    @Override
    public double freezingC() {
        return FREEZING_C;
    }

    @Override
    public String toString() {
        return "water";
    }

    private static double scaled(double temperatureC) {
        return (LiquidRange.clampedC(temperatureC) - CENTRE_C) / HALF_WIDTH_K;
    }
}

package loopwright.loop.water;

/**
 * The coolant at one temperature, as far as its flow cares.
 *
 * @param densityKgPerM3 above 0, kg/m³
 * @param viscosityPaS dynamic viscosity, above 0, Pa·s
 */
public record LiquidState(double densityKgPerM3, double viscosityPaS) {

    /** Water at 20 °C and 0.1 MPa: density by [IAPWS95], viscosity by [IAPWSR12]. */
    public static final LiquidState WATER_20_C = new LiquidState(998.2065, 1.001597e-3);

    /** Checks the ranges. */
    public LiquidState {
        check("density", densityKgPerM3, "kg/m³");
        check("viscosity", viscosityPaS, "Pa·s");
    }

    private static void check(String name, double value, String unit) {
        if (!(value > 0 && value <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    name + " of a liquid must be above 0 " + unit + " and finite but was " + value);
        }
    }
}

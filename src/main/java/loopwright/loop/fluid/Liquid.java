package loopwright.loop.fluid;

/**
 * What a coolant weighs, stores, resists and conducts at a temperature.
 *
 * <p><b>Units.</b> Temperature in °C; results in SI.
 *
 * <p><b>Valid for</b> the range that each liquid states. From 0 to 100 °C every property is smooth and positive, so a solver
 * may pass through; beyond, the value of the nearer end holds. NaN is refused.
 */
public interface Liquid {

    /**
     * Density, kg/m³.
     *
     * @throws IllegalArgumentException if the temperature is NaN
     */
    double densityKgPerM3(double temperatureC);

    /**
     * Specific heat capacity at constant pressure, J/(kg·K).
     *
     * @throws IllegalArgumentException if the temperature is NaN
     */
    double heatCapacityJPerKgK(double temperatureC);

    /**
     * Dynamic viscosity, Pa·s.
     *
     * @throws IllegalArgumentException if the temperature is NaN
     */
    double viscosityPaS(double temperatureC);

    /**
     * Thermal conductivity, W/(m·K).
     *
     * @throws IllegalArgumentException if the temperature is NaN
     */
    double conductivityWPerMK(double temperatureC);

    /** Where it begins to freeze, °C. */
    double freezingC();

    /**
     * Prandtl number: how fast momentum spreads against heat, dimensionless.
     *
     * @throws IllegalArgumentException if the temperature is NaN
     */
    default double prandtl(double temperatureC) {
        return viscosityPaS(temperatureC) * heatCapacityJPerKgK(temperatureC) / conductivityWPerMK(temperatureC);
    }
}

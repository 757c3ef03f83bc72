package loopwright.loop.fluid;

/** The temperatures that the liquids' properties are defined for: 0 to 100 °C. */
final class LiquidRange {

    /** Water freezes, °C. */
    private static final double LOWEST_C = 0;

    /** Water boils, °C. */
    private static final double HIGHEST_C = 100;

    private LiquidRange() {}

    /**
     * The temperature, or the nearer end of the range if it is outside, °C.
     *
     * @throws IllegalArgumentException if it is NaN
     */
    static double clampedC(double temperatureC) {
        if (Double.isNaN(temperatureC)) {
            throw new IllegalArgumentException("temperature must be a number of °C but was NaN");
        }
        return Math.max(LOWEST_C, Math.min(HIGHEST_C, temperatureC));
    }
}

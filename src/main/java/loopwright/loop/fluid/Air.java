package loopwright.loop.fluid;

/**
 * Dry air at a temperature and a pressure; everything is worked out once, when it is made.
 *
 * <p><b>Units.</b> Temperature in °C, altitude in m, pressure in Pa; results in SI.
 *
 * <p><b>Valid for</b> −40 to 150 °C, −500 to 5000 m of altitude, 40 to 120 kPa; outside it is refused. Moisture is left out: at
 * 25 °C and 60 % relative humidity real air is 0.7 % lighter.
 *
 * <p><b>Accuracy.</b> Against handbook rows from 250 to 350 K: viscosity within 1 %, conductivity within 2 %, heat capacity
 * within 0.3 %; density is that of the ideal gas, which air keeps to 0.2 % here. Checked in AirTest.
 *
 * <p><b>Source.</b> Ideal gas; viscosity and conductivity [USSA1976] equations 51 and 53; pressure at altitude [ISO2533].
 */
public final class Air {

    /** 0 °C, K; by definition. */
    private static final double ZERO_CELSIUS_K = 273.15;

    private static final double TEMPERATURE_MIN_C = -40;
    private static final double TEMPERATURE_MAX_C = 150;
    private static final double PRESSURE_MIN_PA = 40_000;
    private static final double PRESSURE_MAX_PA = 120_000;
    private static final double ALTITUDE_MIN_M = -500;
    private static final double ALTITUDE_MAX_M = 5000;

    /** Specific gas constant of dry air, J/(kg·K), [ISO2533]. */
    private static final double GAS_CONSTANT_J_PER_KG_K = 287.0531;

    /** Heat capacity at constant pressure, J/(kg·K), [Incropera] Table A.4 (1006 at 250 K, 1007 at 300 K). */
    private static final double HEAT_CAPACITY_J_PER_KG_K = 1006;

    /** Sutherland's factor, kg/(s·m·√K), [USSA1976] eq. 51. */
    private static final double SUTHERLAND_FACTOR = 1.458e-6;

    /** Sutherland's temperature, K, [USSA1976] eq. 51. */
    private static final double SUTHERLAND_K = 110.4;

    /** Factor of the conductivity, W/(m·K^1.5), [USSA1976] eq. 53. */
    private static final double CONDUCTIVITY_FACTOR = 2.64638e-3;

    /** Temperature of the conductivity, K, [USSA1976] eq. 53. */
    private static final double CONDUCTIVITY_K = 245.4;

    /** Temperature in the conductivity's exponent, K, [USSA1976] eq. 53. */
    private static final double CONDUCTIVITY_EXPONENT_K = 12;

    /** Temperature at sea level, K, [ISO2533]. */
    private static final double SEA_LEVEL_K = 288.15;

    /** Pressure at sea level, Pa, [ISO2533]. */
    private static final double SEA_LEVEL_PA = 101_325;

    /** Fall of temperature with altitude, K/m, [ISO2533]. */
    private static final double LAPSE_K_PER_M = 0.0065;

    /** Exponent of the pressure: gravity over lapse and gas constant, dimensionless, [ISO2533]. */
    private static final double PRESSURE_EXPONENT = 5.25588;

    private final double temperatureC;
    private final double pressurePa;
    private final double densityKgPerM3;
    private final double viscosityPaS;
    private final double conductivityWPerMK;

    private Air(double temperatureC, double pressurePa) {
        check("temperature", temperatureC, TEMPERATURE_MIN_C, TEMPERATURE_MAX_C, "°C");
        check("pressure", pressurePa, PRESSURE_MIN_PA, PRESSURE_MAX_PA, "Pa");
        this.temperatureC = temperatureC;
        this.pressurePa = pressurePa;
        double temperatureK = temperatureC + ZERO_CELSIUS_K;
        double root = temperatureK * Math.sqrt(temperatureK);
        densityKgPerM3 = pressurePa / (GAS_CONSTANT_J_PER_KG_K * temperatureK);
        viscosityPaS = SUTHERLAND_FACTOR * root / (temperatureK + SUTHERLAND_K);
        conductivityWPerMK = CONDUCTIVITY_FACTOR
                * root
                / (temperatureK + CONDUCTIVITY_K * StrictMath.pow(10, -CONDUCTIVITY_EXPONENT_K / temperatureK));
    }

    /**
     * Air of a room: its own temperature, at the standard atmosphere's pressure of its altitude.
     *
     * @param temperatureC −40 to 150
     * @param altitudeM over the sea, geopotential, −500 to 5000
     * @throws IllegalArgumentException if one is outside its range, or NaN
     */
    public static Air at(double temperatureC, double altitudeM) {
        return new Air(temperatureC, standardPressurePa(altitudeM));
    }

    /**
     * Air at a temperature and a pressure.
     *
     * @param temperatureC −40 to 150
     * @param pressurePa absolute, 40 000 to 120 000
     * @throws IllegalArgumentException if one is outside its range, or NaN
     */
    public static Air ofPressure(double temperatureC, double pressurePa) {
        return new Air(temperatureC, pressurePa);
    }

    /**
     * Pressure of the standard atmosphere, Pa.
     *
     * @param altitudeM over the sea, geopotential, −500 to 5000
     * @throws IllegalArgumentException if it is outside its range, or NaN
     */
    public static double standardPressurePa(double altitudeM) {
        check("altitude", altitudeM, ALTITUDE_MIN_M, ALTITUDE_MAX_M, "m");
        double ratio = (SEA_LEVEL_K - LAPSE_K_PER_M * altitudeM) / SEA_LEVEL_K;
        return SEA_LEVEL_PA * StrictMath.pow(ratio, PRESSURE_EXPONENT);
    }

    /** The same pressure at another temperature. */
    public Air withTemperatureC(double otherC) {
        return new Air(otherC, pressurePa);
    }

    /** Temperature, °C. */
    public double temperatureC() {
        return temperatureC;
    }

    /** Absolute pressure, Pa. */
    public double pressurePa() {
        return pressurePa;
    }

    /** Density, kg/m³. */
    public double densityKgPerM3() {
        return densityKgPerM3;
    }

    /** Specific heat capacity at constant pressure, J/(kg·K). */
    public double heatCapacityJPerKgK() {
        return HEAT_CAPACITY_J_PER_KG_K;
    }

    /** Dynamic viscosity, Pa·s. */
    public double viscosityPaS() {
        return viscosityPaS;
    }

    /** Thermal conductivity, W/(m·K). */
    public double conductivityWPerMK() {
        return conductivityWPerMK;
    }

    /** Kinematic viscosity, m²/s. */
    public double kinematicViscosityM2PerS() {
        return viscosityPaS / densityKgPerM3;
    }

    /** Prandtl number, dimensionless. */
    public double prandtl() {
        return viscosityPaS * HEAT_CAPACITY_J_PER_KG_K / conductivityWPerMK;
    }

    /** Two are equal when temperature and pressure are, to the last bit. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Air air
                && Double.compare(air.temperatureC, temperatureC) == 0
                && Double.compare(air.pressurePa, pressurePa) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(temperatureC) + Double.hashCode(pressurePa);
    }

    @Override
    public String toString() {
        return "air at " + temperatureC + " °C and " + pressurePa + " Pa";
    }

    private static void check(String name, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " must be in [" + least + ", " + most + "] " + unit + " but was " + value);
        }
    }
}

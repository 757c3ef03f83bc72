package loopwright.loop.exchange;

/**
 * The state at which a bench measures radiators: air of 25 °C and 101 325 Pa, water of 35 °C.
 *
 * <p><b>Units.</b> SI.
 *
 * <p><b>Source.</b> Air: ideal gas, viscosity and conductivity of the U.S. Standard Atmosphere 1976 ([USSA1976]). Water:
 * [IAPWS95], [IAPWSR12], [IAPWSR15] at 0.1 MPa. That benches work near these states is common practice, no source.
 */
final class Bench {

    /** Air of 25 °C. */
    static final AirProperties AIR = new AirProperties(1.18391, 1.8372e-5, 0.02611, 1006);

    /** Density of water of 35 °C, kg/m³. */
    static final double WATER_KG_PER_M3 = 994.0327;

    /** Viscosity of water of 35 °C, Pa·s. */
    static final double WATER_PA_S = 0.719126e-3;

    /** Heat capacity of water of 35 °C, J/(kg·K). */
    static final double WATER_J_PER_KG_K = 4179.26;

    /** Conductivity of water of 35 °C, W/(m·K). */
    static final double WATER_W_PER_M_K = 0.62170;

    private Bench() {}
}

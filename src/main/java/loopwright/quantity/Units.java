package loopwright.quantity;

/** Conversions between the units of data sheets and SI; exact by definition. */
public final class Units {

    /** Seconds in an hour: m³/h over this is m³/s. */
    public static final double SECONDS_PER_HOUR = 3600;

    /** Litres a minute in one m³/s. */
    public static final double L_PER_MIN_PER_M3_PER_S = 60_000;

    /** Pascals in a kilopascal. */
    public static final double PA_PER_KPA = 1000;

    /** Kelvin at 0 °C. */
    public static final double KELVIN_AT_0_C = 273.15;

    /** Metres in a hundredth of a millimetre. */
    public static final double M_PER_HMM = 1e-5;

    /** Square metres in a square centimetre. */
    public static final double M2_PER_CM2 = 1e-4;

    /** Metres in a millimetre. */
    public static final double M_PER_MM = 1e-3;

    private Units() {}

    /** Flow in m³/s. */
    public static double m3PerSOfLPerMin(double flowLPerMin) {
        return flowLPerMin / L_PER_MIN_PER_M3_PER_S;
    }

    /** Flow in L/min. */
    public static double lPerMin(double flowM3PerS) {
        return flowM3PerS * L_PER_MIN_PER_M3_PER_S;
    }

    /** Flow in m³/h. */
    public static double m3PerH(double flowM3PerS) {
        return flowM3PerS * SECONDS_PER_HOUR;
    }
}

package loopwright.catalog.read;

import java.util.Map;

/**
 * The range a number may have when its field does not say otherwise, by the unit the field's name ends in.
 *
 * <p>Wide enough for anything a workshop buys, narrow enough to catch a wrong unit. Common practice, no source.
 */
public final class UnitLimits {

    private static final Map<String, Range> BY_UNIT = Map.ofEntries(
            Map.entry("mm", new Range(0, 1000, "Is it given in mm?")),
            Map.entry("cm2", new Range(0, 10_000, "Maybe the sheet gives mm2?")),
            Map.entry("m", new Range(0, 100, "Is it given in m?")),
            Map.entry("W", new Range(0, 3000, "Is it given in W?")),
            Map.entry("Pa", new Range(0, 2000, "Maybe the sheet gives another unit of pressure?")),
            Map.entry("kPa", new Range(0, 300, "Maybe the sheet gives Pa or mbar?")),
            Map.entry("m3_per_h", new Range(0, 1000, "Maybe the sheet gives L/min?")),
            Map.entry("L_per_min", new Range(0, 60, "Maybe the sheet gives L/h?")),
            Map.entry("mL", new Range(0, 10_000, "Is it given in mL?")),
            Map.entry("L", new Range(0, 200, "Maybe the sheet gives mL?")),
            Map.entry("g", new Range(0, 20_000, "Is it given in g?")),
            Map.entry("kg", new Range(0, 100, "Maybe the sheet gives g?")),
            Map.entry("GB", new Range(0, 4096, "Maybe the sheet gives MB?")),
            Map.entry("A", new Range(0, 20, "Maybe the sheet gives mA?")),
            Map.entry("K", new Range(0, 100, "It is a difference of temperatures.")),
            Map.entry("C", new Range(-50, 150, "Maybe the sheet gives kelvin or Fahrenheit?")),
            Map.entry("K_per_W", new Range(0, 10, "")),
            Map.entry("W_per_K", new Range(0, 300, "Maybe the sheet gives W at 10 K?")),
            Map.entry("W_per_m_K", new Range(0, 450, "It is a metal's conductivity.")),
            Map.entry("um_per_m_K", new Range(0, 300, "Micrometres a metre and kelvin: 1e-6 /K.")),
            Map.entry("deg", new Range(0, 360, "")),
            Map.entry("dBA", new Range(0, 100, "")),
            Map.entry("rpm", new Range(0, 10_000, "")),
            Map.entry("percent", new Range(0, 100, "")),
            Map.entry("cents", new Range(0, 100_000_000, "It is in cents.")),
            Map.entry("cents_per_h", new Range(0, 1_000_000, "It is in cents.")),
            Map.entry("h", new Range(0, 1000, "Maybe it is given in minutes?")),
            Map.entry("h_per_day", new Range(0, 24, "")),
            Map.entry("days", new Range(0, 365, "")),
            Map.entry("months", new Range(0, 120, "")));

    private static final Range NO_UNIT = new Range(0, Double.MAX_VALUE, "");

    private UnitLimits() {}

    /** The range of a unit; 0 or more for a number without one. */
    public static Range of(String unit) {
        return BY_UNIT.getOrDefault(unit, NO_UNIT);
    }
}

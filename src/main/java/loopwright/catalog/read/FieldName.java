package loopwright.catalog.read;

import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How a record component is called in a file: small letters and underscores, the unit at the end in its own case.
 *
 * @param text the whole name, like {@code max_flow_L_per_min}
 * @param unit the unit it ends in, like {@code L_per_min}; empty without one
 */
public record FieldName(String text, String unit) {

    /** Units as they end a component's name and as they end a field's name; longer endings first. */
    private static final List<Map.Entry<String, String>> UNITS = List.of(
            Map.entry("CentsPerH", "cents_per_h"),
            Map.entry("LPerMin", "L_per_min"),
            Map.entry("M3PerH", "m3_per_h"),
            Map.entry("HPerDay", "h_per_day"),
            Map.entry("KPerW", "K_per_W"),
            Map.entry("WPerMK", "W_per_m_K"),
            Map.entry("UmPerMK", "um_per_m_K"),
            Map.entry("WPerK", "W_per_K"),
            Map.entry("Percent", "percent"),
            Map.entry("Months", "months"),
            Map.entry("Cents", "cents"),
            Map.entry("Days", "days"),
            Map.entry("DBA", "dBA"),
            Map.entry("KPa", "kPa"),
            Map.entry("Cm2", "cm2"),
            Map.entry("Rpm", "rpm"),
            Map.entry("Deg", "deg"),
            Map.entry("Mm", "mm"),
            Map.entry("ML", "mL"),
            Map.entry("Pa", "Pa"),
            Map.entry("Kg", "kg"),
            Map.entry("Gb", "GB"),
            Map.entry("W", "W"),
            Map.entry("L", "L"),
            Map.entry("A", "A"),
            Map.entry("K", "K"),
            Map.entry("C", "C"),
            Map.entry("H", "h"),
            Map.entry("M", "m"),
            Map.entry("G", "g"));

    /** The name of a component, given in camel case. */
    public static FieldName of(String component) {
        for (Map.Entry<String, String> unit : UNITS) {
            if (component.endsWith(unit.getKey())) {
                String stem = component.substring(
                        0, component.length() - unit.getKey().length());
                return new FieldName(snake(stem) + "_" + unit.getValue(), unit.getValue());
            }
        }
        return new FieldName(snake(component), "");
    }

    /** The name without its unit. */
    public String stem() {
        return unit.isEmpty() ? text : text.substring(0, text.length() - unit.length() - 1);
    }

    private static String snake(String camel) {
        return camel.replaceAll("(?<=[a-z0-9])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
    }
}

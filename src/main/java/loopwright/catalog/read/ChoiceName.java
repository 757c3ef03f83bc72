package loopwright.catalog.read;

import java.util.Locale;
import java.util.Map;

/** How an enum's value is written in a file: small letters and hyphens, with the trade's spelling for sizes. */
public final class ChoiceName {

    /** Values whose names Java cannot spell. */
    private static final Map<String, String> SPELLED =
            Map.of("D2_5", "2.5-inch", "D3_5", "3.5-inch", "M2", "m.2", "UNC_6_32", "6-32", "M3_5", "m3.5");

    private ChoiceName() {}

    /** The word for a value. */
    public static String of(Enum<?> value) {
        String spelled = SPELLED.get(value.name());
        return spelled != null ? spelled : value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

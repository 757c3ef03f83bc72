package loopwright.paper;

import java.util.Locale;

/** Values of enums as the JSON spells them. */
final class JsonWords {

    private JsonWords() {}

    /** Small letters and hyphens: {@code in-cover}. */
    static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

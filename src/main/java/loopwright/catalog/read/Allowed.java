package loopwright.catalog.read;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.quantity.Dimension;

/** What a field takes, in words. */
final class Allowed {

    private Allowed() {}

    static String words(Slot slot) {
        Class<?> raw = slot.raw();
        if (raw == Optional.class) {
            return words(slot.held());
        }
        if (raw == Dimension.class) {
            return "a number of mm, or unknown";
        }
        if (raw == Span.class) {
            return "a span [from, to]";
        }
        if (raw == Pattern.class) {
            return "a pattern like 2x140";
        }
        if (raw.isEnum()) {
            return String.join(", ", choices(raw));
        }
        if (raw == List.class) {
            return "a list";
        }
        if (raw == String.class) {
            return "a text";
        }
        if (raw == boolean.class) {
            return "true or false";
        }
        if (raw.isRecord()) {
            return "a map with "
                    + Slot.allOf(raw).stream().map(s -> s.name().text()).collect(Collectors.joining(", "));
        }
        return raw == double.class || raw == Double.class ? "a number" : "a whole number";
    }

    static List<String> choices(Class<?> type) {
        return Arrays.stream(type.getEnumConstants())
                .map(c -> ChoiceName.of((Enum<?>) c))
                .toList();
    }
}

package loopwright.catalog.read;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import loopwright.catalog.read.Node.Scalar;

/** Reads numbers without any coercion: plain decimals only, inside their range. */
final class Numbers {

    /** Digits as people write them; more than 15 are no measurement. */
    private static final Pattern PLAIN = Pattern.compile("-?(0|[1-9]\\d{0,14})(\\.\\d{1,15})?");

    private static final Pattern LEADING_ZERO = Pattern.compile("[-+]?0[0-9_]+(\\.\\d*)?");
    private static final Pattern LIKE_A_NUMBER = Pattern.compile("[-+.]?\\d.*");
    private static final Pattern NOT_FINITE = Pattern.compile("[-+]?\\.?(nan|inf|infinity)", Pattern.CASE_INSENSITIVE);

    private final Notes notes;

    Numbers(Notes notes) {
        this.notes = notes;
    }

    Optional<Object> value(Slot slot, Node node, String path) {
        Class<?> type = slot.raw();
        if (type == double.class || type == Double.class) {
            return number(slot.range(), node, path, "a number").map(BigDecimal::doubleValue);
        }
        boolean isLong = type == long.class || type == Long.class;
        Optional<BigDecimal> number = number(slot.range(), node, path, "a whole number");
        if (number.isEmpty()) {
            return Optional.empty();
        }
        String text = ((Scalar) node).text();
        if (text.indexOf('.') >= 0) {
            return notes.wrong(node, path, text, "a whole number", "Write it without a decimal point.");
        }
        if (!isLong && number.get().compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) > 0) {
            return notes.wrong(node, path, text, "at most " + Integer.MAX_VALUE, "");
        }
        return Optional.of(
                isLong
                        ? (Object) number.get().longValueExact()
                        : (Object) number.get().intValueExact());
    }

    Optional<BigDecimal> number(Range range, Node node, String path, String allowed) {
        if (!(node instanceof Scalar s) || s.kind() == Scalar.Kind.TRUTH || s.kind() == Scalar.Kind.NOTHING) {
            return notes.wrong(node, path, node.words(), allowed, "");
        }
        String text = s.text();
        if (NOT_FINITE.matcher(text).matches()) {
            return notes.wrong(node, path, text, "a finite number", "");
        }
        if (LEADING_ZERO.matcher(text).matches()) {
            return notes.wrong(
                    node,
                    path,
                    text,
                    "a number without a leading zero",
                    "Some programs read " + text + " as octal: write it without the leading zero.");
        }
        if (s.kind() == Scalar.Kind.TEXT) {
            String hint = PLAIN.matcher(text).matches() ? "Write it without quotes." : numberHint(text);
            return notes.wrong(node, path, node.words(), allowed, hint);
        }
        if (!PLAIN.matcher(text).matches()) {
            return notes.wrong(node, path, text, "a plain decimal number like 12 or 0.5", "");
        }
        BigDecimal number = new BigDecimal(text);
        if (!range.holds(number)) {
            return notes.wrong(node, path, text, range.words(), range.hint());
        }
        return Optional.of(number);
    }

    private static String numberHint(String text) {
        return LIKE_A_NUMBER.matcher(text).matches() ? "Write it plainly, like 12 or 0.5." : "";
    }
}

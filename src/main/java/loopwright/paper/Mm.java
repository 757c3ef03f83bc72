package loopwright.paper;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;
import loopwright.quantity.Hundredths;
import loopwright.quantity.IntervalSet;

/** Numbers as answers show them, the same whatever the locale. */
public final class Mm {

    private Mm() {}

    /** A length without needless zeros: 30, 61.5, 7.75. */
    public static BigDecimal number(int hmm) {
        BigDecimal mm = Hundredths.toMm(hmm).stripTrailingZeros();
        return mm.scale() < 0 ? mm.setScale(0, RoundingMode.UNNECESSARY) : mm;
    }

    /** The same as text. */
    public static String text(int hmm) {
        return number(hmm).toPlainString();
    }

    /** Intervals as {@code 61-64.5 or 70-71.5}. */
    public static String text(IntervalSet set) {
        return set.intervals().stream()
                .map(i -> i.from() == i.to() ? text(i.from()) : text(i.from()) + "-" + text(i.to()))
                .collect(Collectors.joining(" or "));
    }

    /** A computed quantity with so many decimals. */
    public static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }
}

package loopwright.catalog.read;

import java.math.BigDecimal;

/**
 * What a number may be, both ends included.
 *
 * @param hint what may be wrong when it is outside; may be empty
 */
public record Range(double min, double max, String hint) {

    /** Whether the number is inside. */
    public boolean holds(BigDecimal number) {
        return number.compareTo(BigDecimal.valueOf(min)) >= 0 && number.compareTo(BigDecimal.valueOf(max)) <= 0;
    }

    /** The range in words. */
    public String words() {
        return max == Double.MAX_VALUE ? plain(min) + " or more" : plain(min) + " to " + plain(max);
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}

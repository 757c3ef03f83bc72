package loopwright.quantity;

import java.util.Locale;

/**
 * Money as whole cents of one currency.
 *
 * @param cents the amount, may be negative (a saving)
 * @param currency ISO 4217 code, three capital letters
 */
public record Money(long cents, String currency) {

    /** Checks the form of the code, not that the currency exists. */
    public Money {
        if (!currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException("currency must be a three-letter ISO 4217 code but was " + currency);
        }
    }

    /** The amount in whole units, half a unit rounded away from zero: {@code 2180}. */
    public String wholeUnits() {
        return String.format(Locale.ROOT, "%d", Math.round(Math.abs(cents) / 100.0) * Long.signum(cents));
    }
}

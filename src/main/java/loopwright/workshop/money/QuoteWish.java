package loopwright.workshop.money;

import java.util.List;

/**
 * What an offer takes in besides what the files say.
 *
 * @param firstTime whether the case is new to the builder
 * @param outside work that others do: powder, glass, laser
 */
public record QuoteWish(boolean firstTime, List<Outside> outside) {

    /** A known case, nothing done outside. */
    public static final QuoteWish PLAIN = new QuoteWish(false, List.of());

    /** Copies. */
    public QuoteWish {
        outside = List.copyOf(outside);
    }

    /** Work that others do. */
    public record Outside(String what, long cents) {
        /** Refuses what is not to be paid. */
        public Outside {
            if (!(cents >= 0)) {
                throw new IllegalArgumentException(
                        "outside work \"" + what + "\" must cost 0 or more but was " + cents);
            }
        }
    }
}

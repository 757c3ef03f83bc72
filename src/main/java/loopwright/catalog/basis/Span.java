package loopwright.catalog.basis;

import loopwright.quantity.Dimension;

/** From one coordinate to another along an axis; written {@code [from, to]}. */
public record Span(
        @Limits(min = -1000, max = 2000) Dimension from,
        @Limits(min = -1000, max = 2000) Dimension to) {
    /** Refuses a span that runs backwards. */
    public Span {
        if (!from.isUnknown() && !to.isUnknown() && from.valueHmm() > to.valueHmm()) {
            throw new IllegalArgumentException("a span must not run backwards");
        }
    }
}

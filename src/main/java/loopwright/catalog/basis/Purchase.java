package loopwright.catalog.basis;

/** What one piece costs and how long it takes to come. Prices are whole cents of the catalogue's currency. */
public record Purchase(
        @Limits(min = 0, max = 10_000_000) long priceCents,
        @Limits(min = 0, max = 365) int leadDays) {}

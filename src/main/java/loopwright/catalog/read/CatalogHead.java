package loopwright.catalog.read;

/**
 * What {@code catalog.yaml} says about the whole catalogue.
 *
 * @param currency ISO 4217 code of every price
 */
public record CatalogHead(String currency) {
    /** Checks the form of the code. */
    public CatalogHead {
        if (!currency.matches("[A-Z]{3}")) {
            throw new IllegalArgumentException("a currency of three capital letters (ISO 4217)");
        }
    }
}

package loopwright.catalog.part;

import loopwright.catalog.basis.Purchase;

/** What every part has: an id that nothing else in the catalogue has, a title, a price and a lead time. */
public interface Part {
    /** Unique within the catalogue: small letters, digits and hyphens. */
    String id();

    /** What a person calls it. */
    String title();

    /** Price and lead time. */
    Purchase buy();
}

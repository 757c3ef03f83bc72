package loopwright.catalog.measure;

import loopwright.quantity.Dimension;
import loopwright.quantity.Hundredths;

/**
 * A length that takes another value than the catalogue's.
 *
 * @param id of the item
 * @param path of the length
 * @param from what it was before
 * @param to what it is instead; never unknown
 * @param by what replaces it, as a sentence can name it: {@code --assume card.length=+3mm}
 */
public record Replacement(String id, String path, Dimension from, Dimension to, String by) {

    /** Refuses to make a length unknown. */
    public Replacement {
        if (to.isUnknown()) {
            throw new IllegalArgumentException("a length is replaced by a value");
        }
    }

    /** The length's address. */
    public String address() {
        return id + "." + path;
    }

    /** {@code gpu-mid.body.length_mm 268.0 -> 271.0 mm}. */
    public String text() {
        return address() + " " + (from.isUnknown() ? "unknown" : Hundredths.text(from.valueHmm())) + " -> "
                + Hundredths.text(to.valueHmm()) + " mm";
    }
}

package loopwright.catalog.brief;

import java.util.Optional;
import loopwright.catalog.basis.Limits;

/**
 * What the workshop's offers say; left out, the trade's usual figures, and no word of tax but that it is left out.
 *
 * @param taxPercent sales tax on the whole price
 * @param depositLabourPercent of the labour that the deposit covers, beside all parts
 * @param validDays for which an offer stands
 */
public record OfferTerms(
        @Limits(min = 0, max = 50) Optional<Double> taxPercent,
        @Limits(min = 0, max = 100) Optional<Integer> depositLabourPercent,
        @Limits(min = 1, max = 365) Optional<Integer> validDays) {

    /** Nothing said. */
    public static final OfferTerms USUAL = new OfferTerms(Optional.empty(), Optional.empty(), Optional.empty());
}

package loopwright.catalog.brief;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;

/**
 * What the workshop's offers say; left out, the trade's usual figures, and no word of tax but that it is left out.
 *
 * @param taxPercent sales tax on the whole price
 * @param depositLabourPercent of the labour that the deposit covers, beside all parts
 * @param validDays for which an offer stands
 * @param newCase whether the case is new to the builder: the trade takes more contingency then
 * @param outside work that others do: powder, glass, laser
 */
public record OfferTerms(
        @Limits(min = 0, max = 50) Optional<Double> taxPercent,
        @Limits(min = 0, max = 100) Optional<Integer> depositLabourPercent,
        @Limits(min = 1, max = 365) Optional<Integer> validDays,
        boolean newCase,
        List<Outside> outside) {

    /** Copies. */
    public OfferTerms {
        outside = List.copyOf(outside);
    }

    /** Work that others do. */
    public record Outside(
            String what, @Limits(min = 0, max = 10_000_000) long priceCents) {}

    /** Nothing said. */
    public static final OfferTerms USUAL =
            new OfferTerms(Optional.empty(), Optional.empty(), Optional.empty(), false, List.of());
}

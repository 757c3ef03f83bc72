package loopwright.catalog.brief;

import java.util.Optional;
import loopwright.catalog.basis.Limits;

/**
 * The workshop's terms.
 *
 * @param currency ISO 4217
 * @param rateCentsPerH price of an hour
 * @param contingencyPercent on parts, material and labour
 * @param assemblyMin hands-on minutes of a build without any mod
 * @param workHPerDay hours worked on a working day
 * @param dutyStepPercent grid of fan duties
 * @param supplyHeadroomPercent how much more than the sum of loads the supply must be rated for
 * @param offer what offers say
 */
public record Terms(
        String currency,
        @Limits(min = 1, max = 1_000_000) long rateCentsPerH,
        @Limits(min = 0, max = 100) double contingencyPercent,
        @Limits(min = 0, max = 10_000) int assemblyMin,
        @Limits(min = 1, max = 16) double workHPerDay,
        @Limits(min = 1, max = 50) int dutyStepPercent,
        @Limits(min = 0, max = 100) int supplyHeadroomPercent,
        Optional<OfferTerms> offer) {

    /** Terms that say nothing of offers. */
    public Terms(
            String currency,
            long rateCentsPerH,
            double contingencyPercent,
            int assemblyMin,
            double workHPerDay,
            int dutyStepPercent,
            int supplyHeadroomPercent) {
        this(
                currency,
                rateCentsPerH,
                contingencyPercent,
                assemblyMin,
                workHPerDay,
                dutyStepPercent,
                supplyHeadroomPercent,
                Optional.empty());
    }
}

package loopwright.catalog.measure;

import java.util.Optional;
import loopwright.catalog.basis.Limits;

/**
 * What an instrument said of one length, as a file of readings has it.
 *
 * @param of id of the item
 * @param dimension path of the length in it
 * @param valueMm with at most two decimals
 * @param instrument id of one of the practice's instruments
 * @param plusMinusMm left out, what the practice believes of the instrument
 * @param date ISO 8601, like {@code 2026-03-09}
 * @param where on the part it was taken
 * @param who took it
 */
public record Reading(
        String of,
        String dimension,
        @Limits(min = -1000, max = 3000) double valueMm,
        String instrument,
        @Limits(min = 0.01, max = 50) Optional<Double> plusMinusMm,
        String date,
        Optional<String> where,
        Optional<String> who) {}

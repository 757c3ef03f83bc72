package loopwright.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import loopwright.catalog.brief.Terms;

/**
 * Price of a build: parts, material and labour at the brief's rate, and contingency on all of it.
 *
 * <p>Unit: integer cents, each rounded half up. A dearer sum before contingency is a dearer price after it, so bounds
 * may be taken before it.
 */
final class Costing {

    private final Terms terms;

    Costing(Terms terms) {
        this.terms = terms;
    }

    /** Hands-on minutes of a build: assembly, and what its mods take. */
    int labourMin(ModBill bill) {
        return terms.assemblyMin() + bill.handsOnMin();
    }

    private static final int MIN_PER_H = 60;

    /** What a mod set costs besides parts: its material, and all labour of the build. */
    long workCents(ModBill bill) {
        long labour = Math.floorDiv(2L * labourMin(bill) * terms.rateCentsPerH() + MIN_PER_H, 2L * MIN_PER_H);
        return labour + bill.materialCents();
    }

    /** The price of a sum. */
    long priceCents(long sumCents) {
        return BigDecimal.valueOf(sumCents)
                .multiply(BigDecimal.valueOf(terms.contingencyPercent()).add(BigDecimal.valueOf(100)))
                .movePointLeft(2)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /** Days until handover: the longest lead time, then working days, then the longest cure. */
    int days(ModBill bill, int leadDays) {
        BigDecimal minutesPerDay = BigDecimal.valueOf(terms.workHPerDay()).multiply(BigDecimal.valueOf(MIN_PER_H));
        int workDays = BigDecimal.valueOf(labourMin(bill))
                .divide(minutesPerDay, 0, RoundingMode.CEILING)
                .intValueExact();
        return Math.max(leadDays, bill.leadDays()) + workDays + bill.waitDays();
    }
}

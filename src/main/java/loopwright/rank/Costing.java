package loopwright.rank;

import java.math.BigDecimal;
import loopwright.catalog.brief.Terms;

/**
 * Price of a build: parts, material and labour at the brief's rate, and contingency on all of it.
 *
 * <p>Unit: integer cents, each rounded half up. A dearer sum before contingency is a dearer price after it, so bounds
 * may be taken before it.
 */
final class Costing {

    private final Terms terms;

    /** One and the contingency, as a whole number over {@link #factorScale}: exact in the decimals of the file. */
    private final long factor;

    private final long factorScale;

    Costing(Terms terms) {
        this.terms = terms;
        BigDecimal one = BigDecimal.valueOf(terms.contingencyPercent())
                .add(BigDecimal.valueOf(100))
                .movePointLeft(2)
                .stripTrailingZeros();
        int scale = Math.max(0, one.scale());
        this.factor = one.setScale(scale).unscaledValue().longValueExact();
        this.factorScale = BigDecimal.TEN.pow(scale).longValueExact();
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
        long scaled = Math.multiplyExact(sumCents, factor);
        return Math.floorDiv(2 * scaled + factorScale, 2 * factorScale);
    }
}

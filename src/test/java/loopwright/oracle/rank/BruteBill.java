package loopwright.oracle.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;

/** What a mod set takes: minutes with assembly, cents for labour, material and covers, days to wait, covers' lead. */
record BruteBill(long labourMin, long cents, int waitDays, int coverLeadDays) {

    private static final BigDecimal MIN_PER_H = BigDecimal.valueOf(60);

    static BruteBill of(List<Mod> mods, Catalog catalog, Terms terms) {
        long minutes = terms.assemblyMin();
        long cents = 0;
        int wait = 0;
        int lead = 0;
        for (Mod mod : mods) {
            minutes += mod.work().labourMin() + mod.work().paintMin();
            cents += mod.work().materialCents();
            wait = Math.max(wait, mod.work().waitDays());
            for (RaisedCover raised : mod.effect().covers()) {
                Cover cover = catalog.part(Cover.class, raised.cover());
                cents += cover.buy().priceCents();
                lead = Math.max(lead, cover.buy().leadDays());
            }
        }
        long labourCents = BigDecimal.valueOf(minutes)
                .multiply(BigDecimal.valueOf(terms.rateCentsPerH()))
                .divide(MIN_PER_H, 0, RoundingMode.HALF_UP)
                .longValueExact();
        return new BruteBill(minutes, cents + labourCents, wait, lead);
    }

    /** The price of a sum, with contingency. */
    static long priceCents(long sumCents, Terms terms) {
        return BigDecimal.valueOf(sumCents)
                .multiply(BigDecimal.valueOf(100).add(BigDecimal.valueOf(terms.contingencyPercent())))
                .movePointLeft(2)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    /** Days until handover. */
    long days(int longestLeadDays, Terms terms) {
        long working = BigDecimal.valueOf(labourMin)
                .divide(BigDecimal.valueOf(terms.workHPerDay()).multiply(MIN_PER_H), 0, RoundingMode.CEILING)
                .longValueExact();
        return longestLeadDays + working + waitDays;
    }
}

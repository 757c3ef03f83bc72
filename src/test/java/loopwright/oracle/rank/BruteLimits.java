package loopwright.oracle.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import loopwright.catalog.brief.BriefLimits;
import loopwright.loop.SoundPower;

/** The brief's limits. */
record BruteLimits(BriefLimits limits) {

    boolean keeps(BruteFigures figures) {
        BigDecimal labourH = BigDecimal.valueOf(figures.labourMin());
        return figures.priceCents() <= limits.budgetCents().orElse(Long.MAX_VALUE)
                && figures.coolantCentiK() <= coolantCentiK()
                && limits.noiseMaxDBA()
                        .map(max -> figures.soundMillionths()
                                <= SoundPower.ofDBA(max).millionths())
                        .orElse(true)
                && limits.labourMaxH()
                        .map(max -> labourH.compareTo(BigDecimal.valueOf(max).multiply(BigDecimal.valueOf(60))) <= 0)
                        .orElse(true)
                && figures.daysD() <= limits.leadMaxDays().orElse(Integer.MAX_VALUE);
    }

    private long coolantCentiK() {
        return BigDecimal.valueOf(limits.coolantMaxC())
                .subtract(BigDecimal.valueOf(limits.roomC()))
                .movePointRight(2)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}

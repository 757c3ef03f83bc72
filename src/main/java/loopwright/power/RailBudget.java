package loopwright.power;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;

/**
 * What a machine draws from 12 V, and from 5 V and 3.3 V together.
 *
 * <p>Low is each drive's share and the practice's share of the small parts; all the rest is on 12 V. Which rail a board feeds its
 * parts from is its own affair: common practice, no source.
 *
 * @param twelveMilliW from 12 V, mW
 * @param lowMilliW from 5 V and 3.3 V, mW
 */
public record RailBudget(long twelveMilliW, long lowMilliW) {

    /** Volts of the main rail, by definition; ±5 % in the supply guides. */
    static final int TWELVE_V = 12;

    private static final int MILLI_DECIMALS = 3;

    /** Divides a sum of loads. */
    static RailBudget of(long sumMilliW, List<Drive> drives, Practice practice) {
        long low = lowMilliW(drives, practice);
        return new RailBudget(sumMilliW - low, low);
    }

    /** What comes from 5 V and 3.3 V, mW. */
    public static long lowMilliW(List<Drive> drives, Practice practice) {
        long low = Math.min(
                Load.milliwatts(practice.plannedElectric().draw().miscLowW()),
                Load.ofSmallParts(practice.heat()).milliwatts());
        for (Drive drive : drives) {
            low += lowMilliW(drive);
        }
        return low;
    }

    private static long lowMilliW(Drive drive) {
        return drive.electric()
                .map(e -> Math.min(Load.milliwatts(e.lowW()), Load.of(drive).milliwatts()))
                .orElse(0L);
    }

    /** Everything. */
    public long sumMilliW() {
        return twelveMilliW + lowMilliW;
    }

    /** What a supply brings on 12 V, mW: its current times 12 V, rounded once. */
    public static long twelveMilliW(Supply.Rails rails) {
        return BigDecimal.valueOf(rails.twelveVoltA())
                .multiply(BigDecimal.valueOf(TWELVE_V))
                .movePointRight(MILLI_DECIMALS)
                .setScale(0, RoundingMode.HALF_UP)
                .longValueExact();
    }
}

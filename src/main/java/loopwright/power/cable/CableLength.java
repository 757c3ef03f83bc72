package loopwright.power.cable;

import loopwright.catalog.standard.Cabling;
import loopwright.catalog.standard.Cabling.PlugSize;

/**
 * How long a cable has to be: its way, twice the plug, and slack on both; common practice, no source.
 *
 * <p>Unit: whole millimetres, rounded up.
 */
public final class CableLength {

    private static final int HMM_PER_MM = 100;
    private static final int PERCENT = 100;

    /** Below what is written anywhere: sums in binary fractions. */
    private static final double ROUNDING = 1e-6;

    private CableLength() {}

    /** From the supply to a plug. */
    public static int fromSupplyMm(int wayHmm, PlugSize plug, Cabling.Way way) {
        return slack(wayHmm / (double) HMM_PER_MM + 2 * plug.deepMm(), way);
    }

    /** From one plug of a cable to the next, which sit on one run of wires. */
    public static int toNextMm(int wayHmm, Cabling.Way way) {
        return slack(wayHmm / (double) HMM_PER_MM, way);
    }

    private static int slack(double mm, Cabling.Way way) {
        return (int) Math.ceil(mm * (PERCENT + way.slackPercent()) / PERCENT - ROUNDING);
    }
}

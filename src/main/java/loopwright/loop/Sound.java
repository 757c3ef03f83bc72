package loopwright.loop;

import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Pump;

/**
 * How loud a fan or a pump is at a duty.
 *
 * <p><b>Units.</b> dB(A) at 1 m, as the part's sheet gives it at full speed.
 *
 * <p><b>Valid for</b> broadband noise; tones, bearings and a pump's hum on a panel are left out.
 *
 * <p><b>Accuracy.</b> The exponent of real fans is 50 to 60: ±1.5 dB between 80 and 125 % of a speed. Levels of sheets are
 * weak in themselves; differences between duties and counts are better than the absolute figures.
 *
 * <p><b>Source.</b> Fan laws (ASHRAE, HVAC Systems and Equipment, Fans): L = L0 + 50·log10(n/n0). For pumps the same law is
 * common practice, no source.
 */
public final class Sound {

    /** Decibels for a tenfold speed, dB; fan laws. */
    private static final double DB_PER_DECADE_OF_SPEED = 50;

    private Sound() {}

    /** Returns the level of one fan at a duty, dB(A). */
    public static double levelDBA(Fan fan, Duty duty) {
        return levelDBA(fan.air().noiseMaxDBA(), duty.speedShare(fan.air().dutyMinPercent()));
    }

    /** Returns the level of a pump at a duty, dB(A). */
    public static double levelDBA(Pump pump, Duty duty) {
        return levelDBA(
                pump.electric().noiseMaxDBA(), duty.speedShare(pump.electric().dutyMinPercent()));
    }

    private static double levelDBA(double atFullSpeedDBA, double speedShare) {
        return atFullSpeedDBA + DB_PER_DECADE_OF_SPEED * StrictMath.log10(speedShare);
    }
}

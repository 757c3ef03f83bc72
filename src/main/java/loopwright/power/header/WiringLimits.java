package loopwright.power.header;

import java.util.Optional;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.PracticeElectric;
import loopwright.catalog.standard.StandardElectric;
import loopwright.catalog.standard.Standards;

/**
 * What headers, plugs and fans may carry.
 *
 * @param usePercent how much of its limit a header, splitter or hub is given at most, fans starting
 * @param sataMilliA through a SATA plug on 12 V
 * @param peripheralMilliA through the older 4-pin drive plug
 * @param fanSteadyMilliA of one fan
 * @param fanStartMilliA of one fan while it starts
 */
public record WiringLimits(
        int usePercent, int sataMilliA, int peripheralMilliA, int fanSteadyMilliA, int fanStartMilliA) {

    /** Whole, in percent. */
    private static final int WHOLE = 100;

    /** Where standards say nothing there is no limit, mA. */
    private static final int NO_LIMIT_MILLI_A = 1_000_000;

    /** The limits of a catalogue. */
    public static WiringLimits of(Practice practice, Standards standards) {
        PracticeElectric planned = practice.plannedElectric();
        Optional<StandardElectric> published = standards.electric();
        return new WiringLimits(
                planned.headers().usePercent(),
                published
                        .map(s -> MilliAmps.of(s.sata().contactA(), s.sata().contacts()))
                        .orElse(NO_LIMIT_MILLI_A),
                MilliAmps.of(planned.plugs().peripheralA()),
                published.map(s -> MilliAmps.of(s.fan().steadyA())).orElse(NO_LIMIT_MILLI_A),
                published.map(s -> MilliAmps.of(s.fan().startA())).orElse(NO_LIMIT_MILLI_A));
    }

    /** Whether a current is within what a limit is planned to give. */
    public boolean allow(int milliA, int limitMilliA) {
        return (long) milliA * WHOLE <= (long) usePercent * limitMilliA;
    }

    /** What a limit is planned to give, mA, rounded down. */
    public int planned(int limitMilliA) {
        return (int) ((long) usePercent * limitMilliA / WHOLE);
    }
}

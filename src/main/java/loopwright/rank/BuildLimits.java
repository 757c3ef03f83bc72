package loopwright.rank;

import java.math.BigDecimal;
import loopwright.catalog.brief.BriefLimits;
import loopwright.loop.SoundPower;

/** The brief's limits in the units builds are compared in; what is not limited is out of reach. */
record BuildLimits(long priceCents, int coolantOverRoomCentiK, SoundPower sound, int labourMin, int days) {

    private static final int MIN_PER_H = 60;
    private static final int CENTI = 100;

    /**
     * The limits of a brief.
     *
     * <p>The coolant's limit less the room is rounded half up to hundredths of a kelvin, as temperatures are.
     */
    static BuildLimits of(BriefLimits limits) {
        return new BuildLimits(
                limits.budgetCents().orElse(Long.MAX_VALUE),
                (int) Math.floor((limits.coolantMaxC() - limits.roomC()) * CENTI + 0.5),
                limits.noiseMaxDBA().map(SoundPower::ofDBA).orElse(new SoundPower(Long.MAX_VALUE)),
                limits.labourMaxH()
                        .map(h -> BigDecimal.valueOf(h)
                                .multiply(BigDecimal.valueOf(MIN_PER_H))
                                .intValue())
                        .orElse(Integer.MAX_VALUE),
                limits.leadMaxDays().orElse(Integer.MAX_VALUE));
    }

    boolean allow(Build.Outcome outcome) {
        return outcome.priceCents() <= priceCents
                && outcome.coolantOverRoomCentiK() <= coolantOverRoomCentiK
                && outcome.sound().compareTo(sound) <= 0
                && outcome.labourMin() <= labourMin
                && outcome.days() <= days;
    }

    /** Whether nothing with this bound can keep the limits. */
    boolean exclude(Goal.Bound bound) {
        return bound.priceCents() > priceCents
                || bound.coolantOverRoomCentiK() > coolantOverRoomCentiK
                || bound.soundMillionths() > sound.millionths()
                || bound.labourMin() > labourMin
                || bound.days() > days;
    }
}

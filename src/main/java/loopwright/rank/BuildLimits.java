package loopwright.rank;

import java.math.BigDecimal;
import java.math.RoundingMode;
import loopwright.catalog.brief.BriefLimits;
import loopwright.loop.SoundPower;

/** The brief's limits in the units builds are compared in; what is not limited is out of reach. */
public record BuildLimits(long priceCents, int coolantOverRoomCentiK, SoundPower sound, int labourMin, int days) {

    private static final int MIN_PER_H = 60;

    /** No limit at all. */
    public static final BuildLimits NONE = new BuildLimits(
            Long.MAX_VALUE, Integer.MAX_VALUE, new SoundPower(Long.MAX_VALUE), Integer.MAX_VALUE, Integer.MAX_VALUE);

    /** These limits and one on the price, cents. */
    public BuildLimits withPrice(long most) {
        return new BuildLimits(Math.min(priceCents, most), coolantOverRoomCentiK, sound, labourMin, days);
    }

    /** These limits and one on the coolant over the room, hundredths of a kelvin. */
    public BuildLimits withCoolant(int mostCentiK) {
        return new BuildLimits(priceCents, Math.min(coolantOverRoomCentiK, mostCentiK), sound, labourMin, days);
    }

    /** These limits and one on the sound. */
    public BuildLimits withSound(SoundPower most) {
        return new BuildLimits(
                priceCents, coolantOverRoomCentiK, most.compareTo(sound) < 0 ? most : sound, labourMin, days);
    }

    /** These limits and one on hands-on minutes. */
    public BuildLimits withLabour(int mostMin) {
        return new BuildLimits(priceCents, coolantOverRoomCentiK, sound, Math.min(labourMin, mostMin), days);
    }

    /** These limits and one on the days. */
    public BuildLimits withDays(int most) {
        return new BuildLimits(priceCents, coolantOverRoomCentiK, sound, labourMin, Math.min(days, most));
    }

    /**
     * The limits of a brief.
     *
     * <p>The coolant's limit less the room is rounded half up to hundredths of a kelvin, as temperatures are.
     */
    public static BuildLimits of(BriefLimits limits) {
        return new BuildLimits(
                limits.budgetCents().orElse(Long.MAX_VALUE),
                centi(limits),
                limits.noiseMaxDBA().map(SoundPower::ofDBA).orElse(new SoundPower(Long.MAX_VALUE)),
                limits.labourMaxH().map(BuildLimits::wholeMinutes).orElse(Integer.MAX_VALUE),
                limits.leadMaxDays().orElse(Integer.MAX_VALUE));
    }

    private static int wholeMinutes(double hours) {
        return BigDecimal.valueOf(hours)
                .multiply(BigDecimal.valueOf(MIN_PER_H))
                .setScale(0, RoundingMode.FLOOR)
                .intValueExact();
    }

    private static int centi(BriefLimits limits) {
        return BigDecimal.valueOf(limits.coolantMaxC())
                .subtract(BigDecimal.valueOf(limits.roomC()))
                .movePointRight(2)
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact();
    }

    /** What no limit forbids, but the metals do: see rank.md. */
    public static final String MIXED_METALS = "with no choice of parts that keeps aluminium and copper out of one loop";

    static final String TOO_HOT = "too hot";
    static final String TOO_LOUD = "too loud once cool enough";

    /** The first limit that even the best of a bound breaks, in the builder's words. */
    String firstBroken(Goal.Bound bound) {
        if (bound.coolantOverRoomCentiK() > coolantOverRoomCentiK) {
            return TOO_HOT;
        }
        if (bound.soundMillionths() > sound.millionths()) {
            return TOO_LOUD;
        }
        if (bound.labourMin() > labourMin) {
            return "too much work";
        }
        return bound.days() > days ? "too late" : "dearer once cool and quiet enough";
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

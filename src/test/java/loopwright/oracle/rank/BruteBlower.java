package loopwright.oracle.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.Sound;
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.oracle.brute.BruteHung;

/**
 * Real parts on a mount that blow some way.
 *
 * @param cents of radiator, its fittings, and fans
 * @param mounts what the physics is asked about, by its number, duty by duty
 * @param soundMillionths of all its fans, duty by duty
 * @param metal of the radiator; none where there is no radiator
 */
record BruteBlower(
        long cents, int leadDays, List<Integer> mounts, List<Long> soundMillionths, Optional<Radiator.Metal> metal) {

    /** What a core adds to the sound of a fan, dB. */
    private static final double RADIATOR_DB = 3;

    /** What a panel, filter or skin adds, dB. */
    private static final double PANEL_DB = 1;

    /** From this share on it adds nothing. */
    private static final double OPEN_ENOUGH = 0.75;

    /**
     * What hangs on a mount and blows.
     *
     * @param radiator absent for a bare row
     */
    record Hung(
            BruteHung hung,
            Fan fan,
            Machine.MountAir air,
            Optional<Machine.RadiatorAt> radiator,
            AirDirection direction) {}

    static BruteBlower of(
            Hung at, List<Integer> dutiesPercent, BruteThermal thermal, long fittingsCents, RankFault fault) {
        int row = at.hung().pattern().fans();
        int layers = at.hung().fanLayers();
        long count = (long) row * layers;
        long cents = count * at.fan().buy().priceCents();
        int lead = at.fan().buy().leadDays();
        if (at.radiator().isPresent()) {
            cents += at.radiator().get().radiator().buy().priceCents() + fittingsCents;
            lead = Math.max(lead, at.radiator().get().radiator().buy().leadDays());
        }
        double addedDB = fault == RankFault.FANS_SOUND_ALONE ? 0 : addedDB(at);
        AirDirection way = fault == RankFault.EXHAUST_BREATHES_ROOM ? AirDirection.IN : at.direction();
        List<Integer> mounts = new ArrayList<>();
        List<Long> sounds = new ArrayList<>();
        for (int percent : dutiesPercent) {
            Duty duty = new Duty(percent);
            Machine.Fans fans = new Machine.Fans(at.fan(), row, layers, duty);
            mounts.add(thermal.mount(new Machine.FanMount(at.hung().mount().id(), way, fans, at.air(), at.radiator())));
            SoundPower one = SoundPower.ofDBA(Sound.levelDBA(at.fan(), duty) + addedDB);
            sounds.add(count * one.millionths());
        }
        return new BruteBlower(
                cents,
                lead,
                List.copyOf(mounts),
                List.copyOf(sounds),
                at.radiator().map(r -> r.radiator().ports().metal()));
    }

    private static double addedDB(Hung at) {
        AirPath path = at.air().path();
        double least = Math.min(path.openShare(), path.filterShare().orElse(1));
        if (path.cover().isPresent()) {
            least = Math.min(least, path.cover().get().skinShare());
        }
        return (at.radiator().isPresent() ? RADIATOR_DB : 0) + (least < OPEN_ENOUGH ? PANEL_DB : 0);
    }
}

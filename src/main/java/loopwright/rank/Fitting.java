package loopwright.rank;

import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.Layout.Stack;
import loopwright.loop.SoundPower;

/**
 * Real parts on one mount, at one fan duty.
 *
 * @param radiator absent for a bare row of fans
 * @param fans how many of the fan
 * @param conductanceWPerK of the radiator with this air; 0 without one
 */
record Fitting(
        Stack stack,
        Optional<Radiator> radiator,
        Fan fan,
        int fans,
        long cents,
        int leadDays,
        double conductanceWPerK,
        SoundPower sound) {

    /** Whether another costs strictly less and is no worse in anything a build is judged by. */
    boolean isBeatenBy(Fitting other, boolean blowsOut) {
        boolean conductsNoWorse =
                blowsOut ? other.conductanceWPerK == conductanceWPerK : other.conductanceWPerK >= conductanceWPerK;
        return other.cents < cents
                && conductsNoWorse
                && other.sound.compareTo(sound) <= 0
                && other.leadDays <= leadDays;
    }
}

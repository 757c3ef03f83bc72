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

    /** The same parts on a stack that takes the same parts. */
    Fitting on(Stack other) {
        return new Fitting(other, radiator, fan, fans, cents, leadDays, conductanceWPerK, sound);
    }

    /** Whether another costs strictly less and is no worse in anything a build is judged by. */
    boolean isBeatenBy(Fitting other) {
        return other.cents < cents
                && other.conductanceWPerK >= conductanceWPerK
                && other.sound.compareTo(sound) <= 0
                && other.leadDays <= leadDays;
    }
}

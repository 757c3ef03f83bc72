package loopwright.rank;

import loopwright.fit.PartSet;
import loopwright.fit.rules.Chosen;
import loopwright.loop.SoundPower;
import loopwright.loop.material.WettedMetals;

/**
 * The parts of a build besides radiators and fans.
 *
 * @param chosen board, processor, card, memory, block, supply, pump, reservoir
 * @param room the room they take
 * @param cents their price, with the chassis, drives, tube and coolant
 * @param heat what they heat, and the loop they make
 * @param sound of the pump and the supply, which the fans' duty does not change
 * @param leadDays the longest lead time among them
 */
record Core(Chosen chosen, PartSet room, long cents, LoopHeat heat, SoundPower sound, int leadDays) {

    /** What its blocks are made of, where coolant touches them. */
    WettedMetals metals() {
        return WettedMetals.ofBlocks(heat.water());
    }

    /**
     * Whether another of the same room and metals costs strictly less and is no worse in anything: then this one is beaten.
     * One of another metal goes with other radiators.
     */
    boolean isBeatenBy(Core other) {
        return other.room.equals(room)
                && other.metals().equals(metals())
                && other.cents < cents
                && other.heat.flowsLike(heat)
                && other.heat.isAtMost(heat)
                && other.sound.compareTo(sound) <= 0
                && other.leadDays <= leadDays;
    }
}

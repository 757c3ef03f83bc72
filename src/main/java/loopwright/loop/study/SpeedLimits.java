package loopwright.loop.study;

import loopwright.catalog.brief.BriefLimits.HeatLimits;
import loopwright.catalog.standard.Practice;
import loopwright.loop.Junctions;
import loopwright.loop.Machine;
import loopwright.loop.Steady;

/**
 * What speeds have to hold.
 *
 * @param coolantMaxC of the coolant's mean
 * @param parts of processor, card and case
 */
public record SpeedLimits(double coolantMaxC, HeatLimits parts, Practice practice) {

    /** Whether a state holds them. */
    boolean hold(Machine machine, Steady state) {
        return state.water().meanC() <= coolantMaxC && Junctions.keep(machine, state, practice, parts);
    }
}

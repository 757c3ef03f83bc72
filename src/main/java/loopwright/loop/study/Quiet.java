package loopwright.loop.study;

import loopwright.loop.Machine;
import loopwright.loop.SoundPower;
import loopwright.loop.Steady;

/**
 * A machine at its quietest.
 *
 * @param machine at these duties
 * @param state its steady state
 * @param sound of fans and pump
 * @param quieterDB than the machine that was given; below 0 where that does not hold the limits and has to be louder
 */
public record Quiet(Duties duties, Machine machine, Steady state, SoundPower sound, double quieterDB) {}

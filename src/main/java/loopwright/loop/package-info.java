/**
 * The physics of a whole machine: air, coolant and heat balanced together, sound, and how sure all that is.
 *
 * <p>Entry types: {@link loopwright.loop.Machine} (what is asked about), {@link loopwright.loop.MachineModel} (solves it),
 * {@link loopwright.loop.Steady} (the answer) and {@link loopwright.loop.Swings} (its uncertainty). Below it {@code fluid}
 * (properties), {@code water} (the coolant's side), {@code air} (fans and paths) and {@code exchange} (radiators). SI doubles
 * inside, units in the names. Powers and logarithms come from {@link StrictMath}, so that every processor gives the same bytes.
 */
@NullMarked
package loopwright.loop;

import org.jspecify.annotations.NullMarked;

/**
 * The radiator's core: what it resists the air, what passes from coolant to air, and how well two crossing flows exchange.
 *
 * <p>Entry type: {@link loopwright.loop.exchange.RadiatorCore}, made of a catalogue radiator. SI doubles throughout, units in
 * the names; dimensionless numbers without a unit. Powers and logarithms come from {@link StrictMath}, so that every
 * processor gives the same bytes.
 */
@NullMarked
package loopwright.loop.exchange;

import org.jspecify.annotations.NullMarked;

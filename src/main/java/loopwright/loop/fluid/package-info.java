/**
 * Properties of what flows: coolants by temperature, air by temperature and altitude.
 *
 * <p>Entry types: {@link loopwright.loop.fluid.CoolantLiquid} (the liquid of a catalogue's coolant),
 * {@link loopwright.loop.fluid.Liquid} and {@link loopwright.loop.fluid.Air}. Units are SI, temperatures in °C; each is in
 * the name. Mass and volume fractions are shares of the whole, 0 to 1, and never go without saying which.
 */
@NullMarked
package loopwright.loop.fluid;

import org.jspecify.annotations.NullMarked;

/**
 * The water side of a loop: what tubes, fittings, blocks and radiators take of the pressure, what pumps give, and the one
 * flow at which the two are equal.
 *
 * <p>Entry types: {@link loopwright.loop.water.FlowBalance} (the operating point), {@link loopwright.loop.water.Passage}
 * (anything the coolant has to pass) and {@link loopwright.loop.water.HeadCurve} (anything that drives it). Everything is
 * in SI: m³/s, Pa, m, kg/m³, Pa·s. A head is given as the pressure it makes, in Pa. Powers and logarithms come from
 * {@link StrictMath}, so that every processor gives the same bytes.
 */
@NullMarked
package loopwright.loop.water;

import org.jspecify.annotations.NullMarked;

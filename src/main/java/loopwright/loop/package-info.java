/**
 * Air, radiators and sound of a loop: what a radiator conducts, how warm the coolant gets, how loud it is.
 *
 * <p>Entry types: {@link loopwright.loop.RadiatorAir} (one radiator's operating point) and
 * {@link loopwright.loop.CoolingModel} (coolant over room). Units are in the names, as on data sheets: flow in m³/h
 * ({@code M3PerH}), pressure in Pa, conductance in W/K, temperature differences in K, levels in dB(A) at 1 m. Powers and
 * logarithms come from {@link StrictMath}, so that every processor gives the same bytes.
 */
@NullMarked
package loopwright.loop;

import org.jspecify.annotations.NullMarked;

/**
 * What the parts draw, and what a supply has to bring.
 *
 * <p>Entry type: {@link loopwright.power.SupplyNeed}. Units: watts of the catalogue become whole milliwatts
 * ({@code Milliwatts}), so that sums and limits are exact.
 */
@NullMarked
package loopwright.power;

import org.jspecify.annotations.NullMarked;

/**
 * Which header, splitter or hub feeds which fan, and what feeds the pump.
 *
 * <p>Entry type: {@link loopwright.power.header.WiringSearch}. Units: currents at 12 V in whole milliamperes, so that limits are exact;
 * money in cents.
 */
@NullMarked
package loopwright.power.header;

import org.jspecify.annotations.NullMarked;

/**
 * Air: fans against what resists them, mount by mount, and the pressure inside the case that links them.
 *
 * <p>Entry type: {@link loopwright.loop.air.CaseAir}. SI units throughout: m³/s, Pa, m/s. Pressures are gauge, against the
 * room.
 */
@NullMarked
package loopwright.loop.air;

import org.jspecify.annotations.NullMarked;

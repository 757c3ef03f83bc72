/**
 * Builds: layouts with real parts, what they cost and how they cool, and which of them no other beats.
 *
 * <p>Entry type: {@link loopwright.rank.RankSearch}. Money in integer cents, temperatures in kelvin over the room.
 */
@NullMarked
package loopwright.rank;

import org.jspecify.annotations.NullMarked;

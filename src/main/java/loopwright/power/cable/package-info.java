/**
 * Cables as lengths and volumes: the shortest way through a case, which cable feeds which plug, what cures a short one,
 * what goes through a hole and what is left over. The rules are in {@code src/site/markdown/cables.md}.
 *
 * <p>Entry types: {@link loopwright.power.cable.OpenWays}, {@link loopwright.power.cable.CableChoice}. Knows points and
 * boxes, no solver. Units: hundredths of a millimetre for places, whole millimetres for lengths of cable.
 */
@NullMarked
package loopwright.power.cable;

import org.jspecify.annotations.NullMarked;

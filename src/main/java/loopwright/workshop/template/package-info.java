/**
 * Cut and drill templates at true scale: for every panel that the mods of a build cut, what is cut where, whether enough
 * metal stays, and how it is drawn.
 *
 * <p>Everything is in hundredths of a millimetre, in the panel's own view: seen from outside, x to the right, y up. Entry
 * type: {@link loopwright.workshop.template.Templates}.
 */
@NullMarked
package loopwright.workshop.template;

import org.jspecify.annotations.NullMarked;

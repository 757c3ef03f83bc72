/**
 * What needs several items, or several fields of one: unique ids, references, curves that fall, geometry of panels.
 *
 * <p>Entry type: {@link loopwright.catalog.check.Checks}. One class a check; lengths in hundredths of a millimetre.
 */
@NullMarked
package loopwright.catalog.check;

import org.jspecify.annotations.NullMarked;

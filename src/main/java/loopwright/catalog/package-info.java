/**
 * Parts, chassis, mods and briefs: read, checked, immutable.
 *
 * <p>Entry type: {@link loopwright.catalog.Catalog}. Files keep the unit in the name of each field; lengths become
 * {@link loopwright.quantity.Dimension}s, everything else stays the number that the data sheet prints.
 */
@NullMarked
package loopwright.catalog;

import org.jspecify.annotations.NullMarked;

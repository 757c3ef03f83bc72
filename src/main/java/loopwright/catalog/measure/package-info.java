/**
 * Lengths by their addresses, and values that stand in for the catalogue's: readings from an instrument, and
 * assumptions.
 *
 * <p>Entry types: {@link loopwright.catalog.measure.Lengths}, {@link loopwright.catalog.measure.Replacements}. Units:
 * hundredths of a millimetre.
 */
@NullMarked
package loopwright.catalog.measure;

import org.jspecify.annotations.NullMarked;

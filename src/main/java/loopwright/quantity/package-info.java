/**
 * Hundredths of a millimetre, money, intervals and dimensions with their uncertainty.
 *
 * <p>Entry type: {@link loopwright.quantity.Dimension}. Units: lengths are integer hundredths of a millimetre
 * (suffix {@code Hmm}), money is integer cents (suffix {@code Cents}). This is the only room that converts between
 * them and what a file or a screen says.
 */
@NullMarked
package loopwright.quantity;

import org.jspecify.annotations.NullMarked;

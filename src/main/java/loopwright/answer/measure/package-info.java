/**
 * Which dimension to measure first: what hangs on each, what a reading of it is worth, with what and where to take it.
 *
 * <p>Entry type: {@link loopwright.answer.measure.MeasureAnswer}. Lengths are hundredths of a millimetre, money is cents. The
 * definitions are those of {@code src/site/markdown/measure.md}.
 */
@NullMarked
package loopwright.answer.measure;

import org.jspecify.annotations.NullMarked;

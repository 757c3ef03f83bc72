/**
 * How sure a clearance is: worst case, root sum square, and the probability that nothing meets.
 *
 * <p>Entry types: {@link loopwright.tolerance.AxisMargin} (one distance and what may be off in it),
 * {@link loopwright.tolerance.PairMargin} (two bodies) and {@link loopwright.tolerance.FitProbability} (all of them
 * together). Lengths are hundredths of a millimetre; deviations are counted in standard deviations of a normal dimension or
 * in half widths of a rectangular one.
 */
@NullMarked
package loopwright.tolerance;

import org.jspecify.annotations.NullMarked;

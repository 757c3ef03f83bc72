/**
 * Why wishes cannot be had together, and what would change that. Entry type: {@link loopwright.answer.why.WhyAnswer}. Lengths in
 * hundredths of a millimetre, money in cents.
 */
@NullMarked
package loopwright.answer.why;

import org.jspecify.annotations.NullMarked;

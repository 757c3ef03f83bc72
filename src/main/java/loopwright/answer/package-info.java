/**
 * Questions over several solves: the list of what fits, what a mod unlocks, what a case can hold.
 *
 * <p>Entry types: {@link loopwright.answer.FitList}, {@link loopwright.answer.Unlocks}. Lengths in hundredths of a
 * millimetre, money in cents.
 */
@NullMarked
package loopwright.answer;

import org.jspecify.annotations.NullMarked;

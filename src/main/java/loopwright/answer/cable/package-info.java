/**
 * The cables and drives of one build: which cable feeds what and by which way, what is left over, how drives are held.
 *
 * <p>Entry types: {@link loopwright.answer.cable.CablePlan}, {@link loopwright.answer.cable.DriveList}. Places in
 * hundredths of a millimetre, lengths of cable in whole millimetres, money in cents.
 */
@NullMarked
package loopwright.answer.cable;

import org.jspecify.annotations.NullMarked;

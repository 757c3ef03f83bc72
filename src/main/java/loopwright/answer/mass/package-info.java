/**
 * What a machine weighs, where its weight is, how it stands and how it is lifted.
 *
 * <p>Entry type: {@link loopwright.answer.mass.BuildMass}; the arithmetic is in {@link loopwright.answer.mass.Masses},
 * {@link loopwright.answer.mass.SpringFeet} and {@link loopwright.answer.mass.Tipping}. Kilograms (loads too), millimetres
 * in the chassis frame, degrees.
 */
@NullMarked
package loopwright.answer.mass;

import org.jspecify.annotations.NullMarked;

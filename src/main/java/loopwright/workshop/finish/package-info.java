/**
 * Paint and colours of a build: what is painted with what and how often, what that does to fits, which colours match.
 *
 * <p>Entry type: {@link loopwright.workshop.finish.Finish}. Units: hundredths of a millimetre, and their squares for areas.
 */
@NullMarked
package loopwright.workshop.finish;

import org.jspecify.annotations.NullMarked;

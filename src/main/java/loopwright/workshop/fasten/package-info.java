/**
 * Screws of a build: layers under each head, the lengths that hold without touching a tube, what stock has of them.
 *
 * <p>Entry type: {@link loopwright.workshop.fasten.Fasteners}. Unit: hundredths of a millimetre.
 */
@NullMarked
package loopwright.workshop.fasten;

import org.jspecify.annotations.NullMarked;

/**
 * Which radiator layouts fit a chassis, with which mods: shapes, bodies, the Choco models, the position kernel.
 *
 * <p>Entry type: {@link loopwright.fit.FitSearch}. Unit: hundredths of a millimetre. The rules are those of
 * {@code src/site/markdown/fit.md}.
 */
@NullMarked
package loopwright.fit;

import org.jspecify.annotations.NullMarked;

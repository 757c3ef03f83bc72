/**
 * The way of one tube from port to port through free space.
 *
 * <p>Entry type: {@link loopwright.plumbing.route.Router}. Unit: hundredths of a millimetre. The rules are those of
 * {@code src/site/markdown/plumbing.md}.
 */
@NullMarked
package loopwright.plumbing.route;

import org.jspecify.annotations.NullMarked;

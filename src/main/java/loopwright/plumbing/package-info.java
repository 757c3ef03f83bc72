/**
 * The loop of a build: its ports, the order of its parts, the runs of its tube, and how it is filled, bled and drained.
 *
 * <p>Entry type: {@link loopwright.plumbing.Planner}. Unit: hundredths of a millimetre. The rules are those of
 * {@code src/site/markdown/plumbing.md}.
 */
@NullMarked
package loopwright.plumbing;

import org.jspecify.annotations.NullMarked;

/** What parts, chassis and briefs are written in: spans, poses, patterns, prices. Lengths are {@link loopwright.quantity.Dimension}s. */
@NullMarked
package loopwright.catalog.basis;

import org.jspecify.annotations.NullMarked;

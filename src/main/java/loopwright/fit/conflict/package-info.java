/**
 * Sets of facts that cannot hold together, and sets to give up: the mathematics, whatever the facts are about. Entry types: {@link
 * loopwright.fit.conflict.HittingSets}, {@link loopwright.fit.conflict.ConflictSearch}. Dimensionless.
 */
@NullMarked
package loopwright.fit.conflict;

import org.jspecify.annotations.NullMarked;

/** Strict reading of YAML into records: every problem with its place, all at once. */
@NullMarked
package loopwright.catalog.read;

import org.jspecify.annotations.NullMarked;

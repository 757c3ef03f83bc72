/**
 * The command line: one class per command, no thinking.
 *
 * <p>Entry type: {@link loopwright.cli.App}. Options become one call, its answer is printed, and the exit code says how
 * it went.
 */
@NullMarked
package loopwright.cli;

import org.jspecify.annotations.NullMarked;

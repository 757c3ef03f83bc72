/**
 * The workshop's book: one HTML page that holds everything of a build, with its drawings inline, and prints on A4.
 *
 * <p>Entry type: {@link loopwright.paper.book.Book}. It only lays out what other rooms have worked out.
 */
@NullMarked
package loopwright.paper.book;

import org.jspecify.annotations.NullMarked;

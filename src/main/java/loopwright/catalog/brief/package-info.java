/** What the client wants, forbids and pays. Entry type: {@link loopwright.catalog.brief.Brief}. */
@NullMarked
package loopwright.catalog.brief;

import org.jspecify.annotations.NullMarked;

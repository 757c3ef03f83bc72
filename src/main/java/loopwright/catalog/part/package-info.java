/** The parts of a build, one record a kind, one to one with the items of the files in {@code catalogs/}. */
@NullMarked
package loopwright.catalog.part;

import org.jspecify.annotations.NullMarked;

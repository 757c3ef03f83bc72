/** What all catalogues share: published outlines and patterns, and the trade's allowances. Files in {@code shared/}. */
@NullMarked
package loopwright.catalog.standard;

import org.jspecify.annotations.NullMarked;

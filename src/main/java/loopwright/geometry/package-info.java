/**
 * Bodies whose faces are sums of named dimensions, and the clearance of two boxes.
 *
 * <p>Entry type: {@link loopwright.geometry.Body}. Unit: hundredths of a millimetre in the chassis frame.
 */
@NullMarked
package loopwright.geometry;

import org.jspecify.annotations.NullMarked;

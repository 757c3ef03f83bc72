/** In which order parts go in and come out. Entry type: {@link loopwright.workshop.assembly.Assembly}. Unit: hundredths of a millimetre. */
@NullMarked
package loopwright.workshop.assembly;

import org.jspecify.annotations.NullMarked;

/**
 * What is drawn, without any file format: marks in hundredths of a millimetre, sheets of paper, and how a drawing larger
 * than a sheet is cut into tiles.
 *
 * <p>x runs to the right, y up. Entry types: {@link loopwright.workshop.drawing.Drawing}, {@link
 * loopwright.workshop.drawing.Sheet}.
 */
@NullMarked
package loopwright.workshop.drawing;

import org.jspecify.annotations.NullMarked;

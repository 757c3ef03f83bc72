/**
 * Drawings of the workshop as files: PDF at true scale, SVG, DXF.
 *
 * <p>Entry types: {@link loopwright.paper.sheet.SheetPdf}, {@link loopwright.paper.sheet.SheetSvg}, {@link
 * loopwright.paper.sheet.DrawingDxf}. Same input, same bytes.
 */
@NullMarked
package loopwright.paper.sheet;

import org.jspecify.annotations.NullMarked;

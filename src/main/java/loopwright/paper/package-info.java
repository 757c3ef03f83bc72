/**
 * How answers look: text for the terminal, JSON for programs, CSV for spreadsheets.
 *
 * <p>Entry types: {@link loopwright.paper.FitText}, {@link loopwright.paper.FitJson}, {@link loopwright.paper.FitCsv}.
 * Lengths arrive in hundredths of a millimetre and leave in millimetres; everything is written the same whatever the
 * locale. Jackson is used here to write JSON, and for nothing else.
 */
@NullMarked
package loopwright.paper;

import org.jspecify.annotations.NullMarked;

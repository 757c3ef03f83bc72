package loopwright.workshop.drawing;

import java.util.List;

/**
 * One sheet of paper, ready to be written.
 *
 * @param name of the sheet, for a heading or a file
 * @param layers what is on it, in the order it is drawn
 */
public record Sheet(String name, Paper paper, List<Placed> layers) {

    /**
     * Marks put on a sheet.
     *
     * @param clip nothing outside of it shows, in coordinates of the sheet
     * @param byXHmm how far the marks are moved to the right, and {@code byYHmm} up; origin: lower left of the sheet
     */
    public record Placed(List<Mark> marks, Area clip, int byXHmm, int byYHmm) {
        /** Copies. */
        public Placed {
            marks = List.copyOf(marks);
        }
    }

    /** Copies. */
    public Sheet {
        layers = List.copyOf(layers);
    }
}

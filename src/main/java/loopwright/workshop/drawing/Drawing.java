package loopwright.workshop.drawing;

import java.util.List;

/**
 * Something drawn at true scale, without paper.
 *
 * @param bounds all of it lies in here
 * @param wholes what should be whole on one sheet: the reach of each hole
 */
public record Drawing(List<Mark> marks, Area bounds, List<Area> wholes) {

    /** Copies. */
    public Drawing {
        marks = List.copyOf(marks);
        wholes = List.copyOf(wholes);
    }
}

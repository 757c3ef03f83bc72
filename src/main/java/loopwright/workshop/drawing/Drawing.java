package loopwright.workshop.drawing;

import java.util.List;

/**
 * Something drawn at true scale, without paper.
 *
 * @param bounds all of it lies in here
 * @param needed what tiles have to show; the rest of a large panel is not printed
 * @param wholes what should be whole on one sheet: the reach of each hole, and its words
 */
public record Drawing(List<Mark> marks, Area bounds, Area needed, List<Area> wholes) {

    /** Copies. */
    public Drawing {
        marks = List.copyOf(marks);
        wholes = List.copyOf(wholes);
    }
}

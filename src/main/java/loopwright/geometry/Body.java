package loopwright.geometry;

import java.util.List;

/**
 * Something that takes space: one or a few boxes that move together.
 *
 * @param id {@code kind:name}, as the rules of what fits call it
 * @param title what a builder calls it
 */
public record Body(String id, String title, List<BodyBox> boxes) {

    /** Copies. */
    public Body {
        boxes = List.copyOf(boxes);
    }

    /** Names of the dimensions in it that are not known: while there are any, nothing with it is a fit. */
    public List<String> unknowns() {
        return boxes.stream().flatMap(b -> b.unknowns().stream()).distinct().toList();
    }
}

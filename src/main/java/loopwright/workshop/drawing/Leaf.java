package loopwright.workshop.drawing;

import java.util.List;

/**
 * A drawing with the words that belong to it, not yet on paper.
 *
 * @param words what is to be read before anything is cut, on a sheet of its own
 * @param cautions short lines that stand on every sheet of it
 */
public record Leaf(TitleBlock title, Drawing drawing, List<Row> words, List<String> cautions) {
    /** Copies. */
    public Leaf {
        words = List.copyOf(words);
        cautions = List.copyOf(cautions);
    }
}

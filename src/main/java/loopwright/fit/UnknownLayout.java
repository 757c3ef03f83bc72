package loopwright.fit;

import java.util.List;

/**
 * A layout that would fit if what is unknown were nothing.
 *
 * @param measure the dimensions to measure first
 */
public record UnknownLayout(Layout layout, List<String> measure) {

    /** Copies. */
    public UnknownLayout {
        measure = List.copyOf(measure);
    }
}

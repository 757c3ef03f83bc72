package loopwright.power.cable;

import java.util.List;

/**
 * A way of a cable.
 *
 * @param lengthHmm along the axes
 * @param holes ids of the holes it goes through, in order
 */
public record Way(int lengthHmm, List<String> holes) {
    /** Copies. */
    public Way {
        holes = List.copyOf(holes);
    }
}

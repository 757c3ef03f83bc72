package loopwright.fit;

import java.util.List;
import loopwright.quantity.IntervalSet;

/**
 * Positions a stack may take: every combination of one along the mount and one across it.
 *
 * @param along positions of the pattern's centre along the mount
 * @param aside positions across it
 * @param unknowns dimensions in it that are not known
 */
record Range(IntervalSet along, IntervalSet aside, List<String> unknowns) {

    boolean isEmpty() {
        return along.isEmpty() || aside.isEmpty();
    }
}

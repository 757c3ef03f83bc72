package loopwright.fit;

import java.util.List;
import java.util.stream.Stream;
import loopwright.quantity.IntervalSet;

/**
 * Positions a stack may take: every combination of one along the mount and one across it.
 *
 * @param along positions of the pattern's centre along the mount
 * @param aside positions across it
 * @param unknowns dimensions in it that are not known
 */
record Range(IntervalSet along, IntervalSet aside, List<String> unknowns) {

    Range withUnknowns(List<String> more) {
        return new Range(
                along,
                aside,
                Stream.concat(unknowns.stream(), more.stream()).distinct().toList());
    }

    boolean isEmpty() {
        return along.isEmpty() || aside.isEmpty();
    }
}

package loopwright.plumbing.route;

import java.util.Comparator;
import loopwright.catalog.basis.Heading;

/**
 * Where a run starts or ends.
 *
 * @param at the middle of a port's face
 * @param out the way tube leaves it
 */
public record End(Where at, Heading out) implements Comparable<End> {

    @Override
    public int compareTo(End other) {
        return Comparator.comparing(End::at).thenComparing(End::out).compare(this, other);
    }
}

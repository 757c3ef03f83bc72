package loopwright.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Supplier;
import loopwright.fit.PairTable.Link;

/** Links by two small numbers, in rows that grow: looked up millions of times, so no hashing. */
final class LinkGrid {

    private static final Link UNASKED = new Link(PairTable.Status.DEPENDS, List.of());
    private static final Link[] EMPTY = {};

    private final List<Link[]> rows = new ArrayList<>();

    /** What depends, depends on something. */
    private static boolean isUnasked(Link link) {
        return link.status() == PairTable.Status.DEPENDS && link.open().isEmpty();
    }

    /** The link of a pair, decided on first use. */
    Link get(int row, int column, Supplier<Link> decide) {
        while (rows.size() <= row) {
            rows.add(EMPTY);
        }
        Link[] links = rows.get(row);
        if (links.length <= column) {
            Link[] longer = Arrays.copyOf(links, Math.max(column + 1, 2 * links.length));
            Arrays.fill(longer, links.length, longer.length, UNASKED);
            rows.set(row, longer);
            links = longer;
        }
        Link known = links[column];
        if (isUnasked(known)) {
            known = decide.get();
            rows.get(row)[column] = known;
        }
        return known;
    }
}

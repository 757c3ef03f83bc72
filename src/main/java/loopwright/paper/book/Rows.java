package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;

/** A table for a page: heads with units, and rows of as many cells. */
public final class Rows {

    private final List<String> heads;
    private final List<List<String>> rows = new ArrayList<>();

    private Rows(List<String> heads) {
        this.heads = heads;
    }

    /** A table with these heads. */
    public static Rows headed(String... heads) {
        return new Rows(List.of(heads));
    }

    /**
     * Adds a row.
     *
     * @throws IllegalArgumentException if it has more or fewer cells than heads
     */
    public Rows row(String... cells) {
        if (cells.length != heads.size()) {
            throw new IllegalArgumentException(heads.size() + " cells a row but were " + cells.length);
        }
        rows.add(List.of(cells));
        return this;
    }

    List<String> heads() {
        return heads;
    }

    List<List<String>> rows() {
        return List.copyOf(rows);
    }
}

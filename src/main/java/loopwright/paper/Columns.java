package loopwright.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * A small table of at most {@value Lines#WIDTH} columns: two spaces between columns, numbers to the right, and the last
 * column broken into lines.
 */
final class Columns {

    private static final String BETWEEN = "  ";

    private final List<List<String>> rows = new ArrayList<>();
    private final boolean headed;

    private Columns(boolean headed) {
        this.headed = headed;
    }

    /** A table with a head line, which says the units. */
    static Columns headed(String... heads) {
        Columns table = new Columns(true);
        table.row(heads);
        return table;
    }

    /** A table without a head line. */
    static Columns plain() {
        return new Columns(false);
    }

    /** A table with a head line. */
    static Columns of(Passages.Table table) {
        Columns out = headed(table.heads().toArray(String[]::new));
        out.rows.addAll(table.rows());
        return out;
    }

    /** The heads; empty without a head line. */
    List<String> heads() {
        return headed ? rows.get(0) : List.of();
    }

    /** The rows below the heads. */
    List<List<String>> body() {
        return headed ? rows.subList(1, rows.size()) : rows;
    }

    /** Adds a row; every row has the same number of cells. */
    Columns row(String... cells) {
        rows.add(List.of(cells));
        return this;
    }

    /** The lines, each starting with the indent. */
    List<String> lines(String indent) {
        List<String> out = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder head = new StringBuilder(indent);
            int last = row.size() - 1;
            for (int c = 0; c < last; c++) {
                head.append(padded(row.get(c), width(c), isNumeric(c))).append(BETWEEN);
            }
            out.addAll(Lines.wrap(head.toString(), row.get(last)));
        }
        return out;
    }

    private int width(int column) {
        return rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
    }

    private boolean isNumeric(int column) {
        return !body().isEmpty() && body().stream().allMatch(r -> r.get(column).matches("-?[0-9.]+|-"));
    }

    private static String padded(String text, int width, boolean right) {
        String space = " ".repeat(width - text.length());
        return right ? space + text : text + space;
    }
}

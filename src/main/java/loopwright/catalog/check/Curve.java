package loopwright.catalog.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/**
 * A curve of a data sheet: points in a list of a file.
 *
 * @param path where the list stands
 * @param yField name of the second field, for messages
 */
record Curve(Item item, String path, List<Point> points, String xField, String yField) {

    /** Flow and what depends on it. */
    record Point(double x, double y) {}

    /** Notes where flow does not rise, or the other value does not fall. */
    void mustFall(Problems problems) {
        check(-1, "falls", problems);
    }

    /** Notes where flow does not rise, or the other value does not rise with it. */
    void mustRise(Problems problems) {
        check(1, "rises", problems);
    }

    private void check(int direction, String verb, Problems problems) {
        if (points.size() < 2) {
            problems.add(item.problem(path, points.size() + " points", "at least two points", ""));
        }
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point here = points.get(i);
            if (!(here.x() > before.x())) {
                note(i, xField, here.x(), "after", before.x(), "a flow that rises from point to point", problems);
            }
            if (!((here.y() - before.y()) * direction > 0)) {
                note(i, yField, here.y(), "after", before.y(), "a curve that " + verb, problems);
            }
        }
    }

    private void note(int i, String field, double here, String word, double before, String allowed, Problems problems) {
        String found = String.format(Locale.ROOT, "%s %s %s", plain(here), word, plain(before));
        problems.add(item.problem(path + "[" + i + "]." + field, found, allowed, ""));
    }

    /** A number as a file would have it. */
    static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}

package loopwright.answer.measure;

import java.util.List;
import loopwright.quantity.Dimension;

/**
 * A length that can be measured: of one item, or of any of several parts that measure the same and stand for one shape.
 *
 * @param ids of the item or the parts, in order
 * @param path of the length in their files
 * @param now what is believed of it: of several parts the widest ±
 */
public record Measurable(List<String> ids, String path, Dimension now) implements Comparable<Measurable> {

    /** Copies. */
    public Measurable {
        ids = List.copyOf(ids);
    }

    /** {@code short-tower.shell.interior.height_mm}, or {@code rad-a or rad-b: body.thickness_mm}. */
    public String text() {
        return ids.size() == 1 ? ids.get(0) + "." + path : of() + ": " + path;
    }

    /** {@code rad-a or rad-b}. */
    public String of() {
        return String.join(" or ", ids);
    }

    @Override
    public int compareTo(Measurable other) {
        return text().compareTo(other.text());
    }
}

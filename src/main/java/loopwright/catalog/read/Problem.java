package loopwright.catalog.read;

import java.io.Serializable;
import java.util.Comparator;

/**
 * One thing that is wrong in a file: where, what was found, what is allowed, and what may help.
 *
 * @param file as the user would type it
 * @param line 1 is the first
 * @param column 1 is the first
 * @param subject the item it is in, like {@code pump "p-12"}; empty when there is none
 * @param field path of the field inside the item; empty when there is none
 * @param hint a next step, or empty
 */
public record Problem(
        String file, int line, int column, String subject, String field, String found, String allowed, String hint)
        implements Comparable<Problem>, Serializable {

    /** By file, line, column, then by words, so that a list has one order. */
    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::file)
            .thenComparingInt(Problem::line)
            .thenComparingInt(Problem::column)
            .thenComparing(Problem::text);

    /** Longest value quoted from a file, characters. */
    private static final int QUOTE_MAX = 120;

    /** Takes line breaks and control characters out of what was quoted from the file. */
    public Problem {
        subject = cut(oneLine(subject));
        field = cut(oneLine(field));
        found = cut(oneLine(found));
        allowed = oneLine(allowed);
        hint = oneLine(hint);
    }

    /** One line: place, item, field, found, allowed, hint. */
    public String text() {
        StringBuilder out = new StringBuilder(file);
        out.append(':').append(line).append(':').append(column).append(": ");
        if (!subject.isEmpty()) {
            out.append(subject).append(": ");
        }
        if (!field.isEmpty()) {
            out.append(field).append(": ");
        }
        out.append("found ").append(found).append(", allowed ").append(allowed);
        return hint.isEmpty() ? out.toString() : out.append(". ").append(hint).toString();
    }

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029\\p{Cf}]+", " ");
    }

    private static String cut(String text) {
        return text.length() <= QUOTE_MAX ? text : text.substring(0, QUOTE_MAX) + "…";
    }
}

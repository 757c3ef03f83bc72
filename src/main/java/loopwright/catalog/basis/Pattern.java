package loopwright.catalog.basis;

import java.util.List;
import java.util.regex.Matcher;

/** A hole pattern: so many fans of one size in a row, written {@code 2x140}. */
public record Pattern(int fans, int sizeMm) implements Comparable<Pattern> {

    /** Fan sizes the trade sells radiators for, mm; trade practice. */
    public static final List<Integer> SIZES_MM = List.of(80, 92, 120, 140, 180, 200);

    /** Most fans in a row; what the trade makes. */
    public static final int MAX_FANS = 5;

    private static final java.util.regex.Pattern TEXT = java.util.regex.Pattern.compile("([1-9])x(\\d{2,3})");

    /** Checks the count and the size. */
    public Pattern {
        if (fans < 1 || fans > MAX_FANS || !SIZES_MM.contains(sizeMm)) {
            throw new IllegalArgumentException(
                    "a pattern is 1 to " + MAX_FANS + " fans of one of the sizes " + SIZES_MM + ", like 2x140");
        }
    }

    /**
     * Reads {@code 2x140}.
     *
     * @throws IllegalArgumentException if the text is not a pattern
     */
    public static Pattern parse(String text) {
        Matcher m = TEXT.matcher(text);
        if (!m.matches()) {
            throw new IllegalArgumentException("a pattern reads like 2x140");
        }
        return new Pattern(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)));
    }

    @Override
    public int compareTo(Pattern other) {
        int bySize = Integer.compare(sizeMm * fans, other.sizeMm * other.fans);
        return bySize != 0 ? bySize : Integer.compare(sizeMm, other.sizeMm);
    }

    @Override
    public String toString() {
        return fans + "x" + sizeMm;
    }
}

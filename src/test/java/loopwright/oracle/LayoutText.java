package loopwright.oracle;

import java.util.Collection;
import java.util.List;
import loopwright.catalog.basis.Pattern;

/** The text that names a stack in an answer. Lengths in hundredths of a millimetre. */
public final class LayoutText {

    private LayoutText() {}

    /**
     * The text of a stack.
     *
     * @param sizesHmm width, thickness, port overhang, blank overhang
     * @param ports port texts, in any order
     * @param way arrangement and port end, as {@code PUSH/LOW}
     */
    public static String stack(
            Pattern pattern, List<Integer> sizesHmm, Collection<String> ports, int fanThicknessHmm, String way) {
        StringBuilder text = new StringBuilder(pattern.toString());
        sizesHmm.forEach(size -> text.append('/').append(size));
        return text.append('/')
                .append(String.join("+", ports.stream().sorted().toList()))
                .append('/')
                .append(fanThicknessHmm)
                .append('/')
                .append(way)
                .toString();
    }

    /** The text of a port. */
    public static String port(boolean broad, int fromFanAreaHmm, int asideHmm) {
        return (broad ? "B:" : "E:") + fromFanAreaHmm + ":" + asideHmm;
    }

    /** Adds a stack on a mount to the text of those before it. */
    public static String with(String before, String mount, String stack) {
        return (before.isEmpty() ? "" : before + " | ") + mount + ":" + stack;
    }
}

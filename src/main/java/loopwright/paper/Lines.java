package loopwright.paper;

import java.util.ArrayList;
import java.util.List;

/** Text in lines of at most {@value #WIDTH} columns. */
final class Lines {

    /** Columns of a terminal page. */
    static final int WIDTH = 100;

    private Lines() {}

    /**
     * Breaks at spaces; what follows the first line is indented as deep as the head is wide.
     *
     * @param head stands at the start of the first line
     */
    static List<String> wrap(String head, String text) {
        return wrap(head, " ".repeat(head.length()), text);
    }

    /** The words of a text; those that no line could hold are cut. */
    private static List<String> words(String text, int width) {
        List<String> out = new ArrayList<>();
        for (String word : text.split(" ")) {
            String left = word;
            while (left.length() > width) {
                out.add(left.substring(0, width));
                left = left.substring(width);
            }
            out.add(left);
        }
        return out;
    }

    /** Breaks at spaces, with a head for the first line and one for the others. */
    static List<String> wrap(String head, String indent, String text) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder(head);
        int start = head.length();
        for (String word : words(text, WIDTH - Math.max(head.length(), indent.length()))) {
            if (line.length() > start && line.length() + 1 + word.length() > WIDTH) {
                out.add(line.toString().stripTrailing());
                line = new StringBuilder(indent);
                start = indent.length();
            }
            line.append(line.length() > start ? " " : "").append(word);
        }
        out.add(line.toString().stripTrailing());
        return out;
    }
}

package loopwright.paper.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** What of the texts of a page a font has letters for; a question mark stands for each that it lacks. */
final class Glyphs {

    private static final String REPLACEMENT = "?";

    private final PDFont font;
    private final Map<Integer, Boolean> known = new HashMap<>();

    Glyphs(PDFont font) {
        this.font = font;
    }

    /** The text in letters that the font has. */
    String printable(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.append(has(c) ? Character.toString(c) : REPLACEMENT));
        return out.toString();
    }

    /** Whether any letter so far was lacking. */
    boolean lackedAny() {
        return known.containsValue(false);
    }

    private boolean has(int codePoint) {
        return known.computeIfAbsent(codePoint, this::asked);
    }

    /** The library has no question for this: it refuses what it cannot encode. */
    private boolean asked(int codePoint) {
        try {
            font.encode(Character.toString(codePoint));
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException("the font cannot be read: " + e.getMessage(), e);
        }
    }
}

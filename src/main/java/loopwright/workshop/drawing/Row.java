package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One line of words on a sheet.
 *
 * @param heightHmm height of its capitals
 */
public record Row(List<Cell> cells, int heightHmm) {

    /** Height of ordinary words, ISO 3098. */
    public static final int WORDS_HMM = 250;

    /** Height of a heading, ISO 3098. */
    public static final int HEADING_HMM = 350;

    /** Most letters of ordinary words that surely go side by side on the narrowest sheet (180 mm). */
    public static final int LETTERS = 96;

    /** A text, so far from the left edge of the words. */
    public record Cell(int fromLeftHmm, String text) {}

    /** Copies. */
    public Row {
        cells = List.copyOf(cells);
    }

    /** A line without words. */
    public static Row blank() {
        return new Row(List.of(), WORDS_HMM);
    }

    /** A heading. */
    public static Row heading(String text) {
        return new Row(List.of(new Cell(0, text)), HEADING_HMM);
    }

    /** A line of a table whose columns start at these millimetres. */
    public static Row of(List<Integer> columnsMm, List<String> texts) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            cells.add(new Cell(columnsMm.get(i) * 100, texts.get(i)));
        }
        return new Row(cells, WORDS_HMM);
    }

    /** A text on as many lines as it needs; lines after the first are set in. */
    public static List<Row> wrapped(String text) {
        List<Row> out = new ArrayList<>();
        for (String line : lines(text, LETTERS)) {
            out.add(new Row(List.of(new Cell(out.isEmpty() ? 0 : 400, line)), WORDS_HMM));
        }
        return List.copyOf(out);
    }

    /** A text cut between words into lines of at most so many letters; at least one line. */
    public static List<String> lines(String text, int letters) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Arrays.asList(text.split(" ", -1))) {
            if (line.length() + word.length() + 1 > letters && line.length() > 0) {
                out.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        out.add(line.toString());
        return List.copyOf(out);
    }
}

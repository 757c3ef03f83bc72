package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;

/** Rows for a spreadsheet: RFC 4180, and no cell that a spreadsheet would take for a formula. */
final class Csv {

    private final PrintWriter out;

    Csv(PrintWriter out) {
        this.out = out;
    }

    /** One row. */
    void row(List<String> cells) {
        out.print(cells.stream().map(Csv::cell).collect(Collectors.joining(",")));
        out.print("\r\n");
    }

    /** Quotes where commas, quotes or line breaks ask for it; numbers stay numbers, other signs get an apostrophe. */
    static String cell(String text) {
        boolean number = text.matches("-?\\d+(\\.\\d+)?");
        String safe = !number && text.matches("(?s)[=+\\-@\t\r].*") ? "'" + text : text;
        return safe.matches("(?s).*[\",\r\n].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}

package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import loopwright.answer.Comparison;
import loopwright.answer.Comparison.Row;

/** Two builds side by side, for spreadsheets: one row a figure. */
public final class CompareCsv implements ComparePaper {

    private static final List<String> HEADS =
            List.of("figure", "first", "second", "difference", "plus_minus", "brief", "catalog", "program");

    private final Csv csv;
    private final Origin origin;

    /** Writes on a writer, which stays open. */
    public CompareCsv(PrintWriter out, Origin origin) {
        this.csv = new Csv(out);
        this.origin = origin;
    }

    @Override
    public void write(Comparison comparison) {
        csv.row(HEADS);
        for (Row row : comparison.rows()) {
            csv.row(List.of(
                    row.figure(),
                    Mm.rounded(row.first(), 3).toPlainString(),
                    Mm.rounded(row.second(), 3).toPlainString(),
                    Mm.rounded(row.difference(), 3).toPlainString(),
                    row.plusMinus().isPresent()
                            ? Mm.rounded(row.plusMinus().getAsDouble(), 3).toPlainString()
                            : "",
                    origin.brief(),
                    origin.catalog(),
                    origin.program()));
        }
    }

    @Override
    public void nothing(String why) {
        csv.row(HEADS);
    }
}

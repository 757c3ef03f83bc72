package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import loopwright.answer.Comparison;
import loopwright.answer.Comparison.Row;
import loopwright.rank.Build;

/** Two builds side by side, for people. */
public final class CompareText implements ComparePaper {

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;

    /** Writes to a terminal or a file. */
    public CompareText(PrintWriter out, Origin origin, Ink ink) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
    }

    @Override
    public void write(Comparison comparison) {
        Lines.wrap(
                        "COMPARE  ",
                        comparison.first().fitCase().chassis().title() + ": A is "
                                + name(comparison.first().build()) + ", B is "
                                + name(comparison.second().build()))
                .forEach(this::print);
        print("");
        Columns table = Columns.headed("", "A", "B", "B less A", "+-");
        for (Row row : comparison.rows()) {
            table.row(
                    row.figure(),
                    Mm.rounded(row.first(), 1).toPlainString(),
                    Mm.rounded(row.second(), 1).toPlainString(),
                    Mm.rounded(row.difference(), 1).toPlainString(),
                    row.plusMinus().isPresent()
                            ? Mm.rounded(row.plusMinus().getAsDouble(), 1).toPlainString()
                            : "");
        }
        table.lines("").forEach(this::print);
        List<List<String>> only = comparison.onlyOne();
        print("");
        Lines.wrap("only A: ", words(only.get(0))).forEach(this::print);
        Lines.wrap("only B: ", words(only.get(1))).forEach(this::print);
        print("");
        Notes.underCompare(origin).forEach(this::print);
    }

    private static String name(Build build) {
        return build.key() + " ("
                + build.layout().stacks().stream()
                        .map(StackWords::brief)
                        .collect(java.util.stream.Collectors.joining(" | "))
                + ")";
    }

    private static String words(List<String> facts) {
        return facts.isEmpty() ? "nothing" : String.join("; ", facts);
    }

    @Override
    public void nothing(String why) {
        Lines.wrap("COMPARE  ", why).forEach(this::print);
        print(origin.line());
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}

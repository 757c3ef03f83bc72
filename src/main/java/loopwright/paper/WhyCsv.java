package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import loopwright.answer.why.Conflict;
import loopwright.answer.why.Stated;
import loopwright.answer.why.WayOut;
import loopwright.answer.why.WhyAnswer;

/** Why wishes cannot be had, for spreadsheets: one row a fact of a conflict, and a change of a way out. */
public final class WhyCsv implements WhyPaper {

    private static final List<String> HEADS = List.of(
            "chassis",
            "table",
            "number",
            "id",
            "sentence",
            "lack",
            "unit",
            "kind",
            "mods",
            "cost_cents",
            "labour_min",
            "days",
            "brief",
            "catalog",
            "program");

    private final Csv csv;
    private final Origin origin;

    /** Writes on a writer, which stays open. */
    public WhyCsv(PrintWriter out, Origin origin) {
        this.csv = new Csv(out);
        this.origin = origin;
    }

    @Override
    public void begin() {
        csv.row(HEADS);
    }

    @Override
    public boolean add(WhyAnswer answer) {
        int number = 0;
        for (Conflict conflict : answer.conflicts()) {
            number++;
            for (Stated fact : conflict.facts()) {
                row(answer, "conflict", number, fact, List.of("", "", "", "", ""));
            }
        }
        number = 0;
        for (WayOut way : answer.waysOut()) {
            number++;
            List<String> effort = List.of(
                    way.kind().name().toLowerCase(Locale.ROOT),
                    String.join("+", way.mods().ids(answer.fitCase().chassis())),
                    Long.toString(way.effort().costCents()),
                    Integer.toString(way.effort().handsOnMin()),
                    Integer.toString(way.effort().days()));
            for (Stated change : way.changes()) {
                row(answer, "way-out", number, change, effort);
            }
        }
        boolean built = true;
        if (answer.asksBuilds()) {
            built = answer.builds().had().isPresent();
            number = 0;
            for (var told : answer.builds().conflicts()) {
                number++;
                for (Stated fact : told.conflict().facts()) {
                    row(answer, "build-conflict", number, fact, List.of("", "", "", "", ""));
                }
            }
            number = 0;
            for (var given : answer.builds().waysOut()) {
                number++;
                for (Stated change : given.changes()) {
                    row(answer, "build-way-out", number, change, List.of("", "", "", "", ""));
                }
            }
        }
        return answer.had().isPresent() && built;
    }

    private void row(WhyAnswer answer, String table, int number, Stated stated, List<String> effort) {
        csv.row(List.of(
                answer.fitCase().chassis().id(),
                table,
                Integer.toString(number),
                stated.id(),
                stated.sentence(),
                stated.lack()
                        .map(l -> Mm.rounded(l.amount(), 2).toPlainString())
                        .orElse(""),
                stated.lack().map(Stated.Lack::unit).orElse(""),
                effort.get(0),
                effort.get(1),
                effort.get(2),
                effort.get(3),
                effort.get(4),
                origin.brief(),
                origin.catalog(),
                origin.program()));
    }

    @Override
    public void end() {
        // The rows are all there is.
    }
}

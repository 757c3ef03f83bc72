package loopwright.paper;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.measure.MeasureAnswer;
import loopwright.answer.measure.Waiting;
import loopwright.answer.measure.Worth;
import loopwright.catalog.standard.Practice.Instrument;

/** What to measure first, for spreadsheets: one row a dimension; those that are not known come first. */
public final class MeasureCsv implements MeasurePaper {

    private static final List<String> HEADS = List.of(
            "chassis",
            "of",
            "dimension",
            "value_mm",
            "plus_minus_mm",
            "known",
            "layouts_wait",
            "only_one_for",
            "layouts_hang",
            "die",
            "come_alive",
            "exact",
            "regret_avoided_cents",
            "currency",
            "instrument",
            "instrument_plus_minus_mm",
            "not_good_enough",
            "where",
            "list",
            "brief",
            "catalog",
            "program");

    /** Columns between the chassis and the state of the list. */
    private static final int FIGURES = HEADS.size() - 5;

    private final Csv csv;
    private final Origin origin;

    /** Writes on a writer, which stays open. */
    public MeasureCsv(PrintWriter out, Origin origin) {
        this.csv = new Csv(out);
        this.origin = origin;
    }

    @Override
    public void begin() {
        csv.row(HEADS);
    }

    @Override
    public boolean add(MeasureAnswer answer) {
        answer.waiting().forEach(w -> row(answer, waiting(w)));
        answer.worths().forEach(w -> row(answer, worth(w, answer)));
        if (answer.incompleteBecause().isPresent()) {
            row(answer, Collections.nCopies(FIGURES, ""));
        }
        return answer.isAbout();
    }

    private void row(MeasureAnswer answer, List<String> figures) {
        List<String> cells = new ArrayList<>();
        cells.add(answer.fitCase().chassis().id());
        cells.addAll(figures);
        cells.add(answer.incompleteBecause().map(b -> "INCOMPLETE: " + b).orElse("complete"));
        cells.addAll(List.of(origin.brief(), origin.catalog(), origin.program()));
        csv.row(cells);
    }

    private static List<String> waiting(Waiting w) {
        return List.of(
                w.measurable().of(),
                w.measurable().path(),
                "",
                "",
                "unknown",
                Integer.toString(w.layouts()),
                Integer.toString(w.only()),
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                w.where());
    }

    private static List<String> worth(Worth w, MeasureAnswer answer) {
        return List.of(
                w.measurable().of(),
                w.measurable().path(),
                Mm.text(w.measurable().now().valueHmm()),
                Mm.text(w.measurable().now().plusMinusHmm()),
                JsonWords.of(w.measurable().now().known()),
                "",
                "",
                Integer.toString(w.hang().layouts()),
                Integer.toString(w.hang().die()),
                w.hang().exact() ? Integer.toString(w.hang().comeAlive()) : "",
                Boolean.toString(w.hang().exact()),
                Long.toString(Math.round(w.regretCents())),
                answer.fitCase().brief().terms().currency(),
                w.choice().instrument().map(Instrument::id).orElse(""),
                w.choice().instrument().map(i -> Mm.text(i.plusMinusHmm())).orElse(""),
                w.choice().notGoodEnough().stream().map(Instrument::id).collect(Collectors.joining(" ")),
                w.spot());
    }

    @Override
    public void end() {
        // Every row carries its origin.
    }
}

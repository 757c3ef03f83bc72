package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import loopwright.answer.InspectAnswer;
import loopwright.answer.NextSteps.Step;
import loopwright.fit.Growth;

/** The next steps from a build, for spreadsheets: one row a change. */
public final class InspectCsv implements InspectPaper {

    private static final List<String> HEADS = List.of(
            "build",
            "kind",
            "change",
            "key",
            "coolant_gain_K",
            "band_low_K",
            "band_high_K",
            "cost",
            "currency",
            "labour_min",
            "noise_dB",
            "brief",
            "catalog",
            "program");

    private final Csv csv;
    private final Origin origin;

    /** Writes on a writer, which stays open. */
    public InspectCsv(PrintWriter out, Origin origin) {
        this.csv = new Csv(out);
        this.origin = origin;
    }

    @Override
    public void write(InspectAnswer answer) {
        csv.row(HEADS);
        for (Step step : answer.steps().all()) {
            csv.row(List.of(
                    answer.inspection().build().key(),
                    JsonWords.of(step.kind()),
                    step.what(),
                    step.build().key(),
                    Mm.rounded(step.gainK(), 2).toPlainString(),
                    Mm.rounded(step.gainBand().lowK(), 2).toPlainString(),
                    Mm.rounded(step.gainBand().highK(), 2).toPlainString(),
                    Mm.rounded(step.costCents() / 100.0, 2).toPlainString(),
                    answer.inspection().fitCase().brief().terms().currency(),
                    Integer.toString(step.labourMin()),
                    Mm.rounded(step.noiseDB(), 1).toPlainString(),
                    origin.brief(),
                    origin.catalog(),
                    origin.program()));
        }
        answer.cables().ifPresent(p -> p.feeds().forEach(f -> said(answer, "cable", CableCsv.sentence(answer, f))));
        answer.drives().drives().forEach(d -> said(answer, "drive", CableCsv.sentence(answer, d)));
        InspectPowerRows.of(answer.inspection().powering()).forEach(line -> said(answer, "power", line));
        PlumbingCsv.sentences(answer).forEach(e -> said(answer, e.getKey(), e.getValue()));
        InspectMaterialLines.rows(answer.inspection()).forEach(r -> said(answer, "materials", r.get(1), r.get(0)));
        InspectMassLines.rows(answer.inspection()).forEach(r -> said(answer, "mass", r.get(1), r.get(0)));
        answer.inspection().roomLeft().forEach(g -> room(answer, g));
    }

    /** The room left: a row a measure, of a kind of its own, without figures of a change. */
    private void room(InspectAnswer answer, Growth growth) {
        said(answer, "room-left", RoomWords.sentence(growth));
    }

    /** A row of a kind of its own: a sentence without figures of a change. */
    private void said(InspectAnswer answer, String kind, String sentence) {
        said(answer, kind, sentence, "");
    }

    /** The same with what it is about under {@code key}. */
    private void said(InspectAnswer answer, String kind, String sentence, String about) {
        csv.row(List.of(
                answer.inspection().build().key(),
                kind,
                sentence,
                about,
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                origin.brief(),
                origin.catalog(),
                origin.program()));
    }

    @Override
    public void nothing(String why) {
        csv.row(HEADS);
    }
}

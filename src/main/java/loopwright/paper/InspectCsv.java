package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import loopwright.answer.InspectAnswer;
import loopwright.answer.NextSteps.Step;

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
        InspectPowerRows.of(answer.inspection().powering()).forEach(line -> plain(answer, "power", line));
        answer.inspection().roomLeft().forEach(g -> plain(answer, "room-left", RoomWords.sentence(g)));
    }

    /** A row of a kind of its own, without figures of a change: the room left, the electrics. */
    private void plain(InspectAnswer answer, String kind, String sentence) {
        csv.row(List.of(
                answer.inspection().build().key(),
                kind,
                sentence,
                "",
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

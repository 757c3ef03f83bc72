package loopwright.paper;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.RankAnswer;
import loopwright.fit.Witness;
import loopwright.loop.Band;
import loopwright.rank.Build;
import loopwright.rank.RankResult.Ranked;
import loopwright.tolerance.Confidence;

/** Ranked builds, for spreadsheets: one row a build. */
public final class RankCsv implements RankPaper {

    private static final List<String> HEADS = List.of(
            "chassis",
            "list",
            "key",
            "layout",
            "stacks",
            "mods",
            "cost",
            "currency",
            "coolant_over_room_K",
            "band_low_K",
            "band_high_K",
            "noise_dBA",
            "labour_min",
            "days",
            "visible_cuts",
            "hidden_cuts",
            "verdict",
            "margin_mm",
            "between",
            "parts",
            "brief",
            "catalog",
            "program",
            "fit_probability",
            "chance",
            "likeliest_clash",
            "below_confidence");

    private final Csv csv;
    private final Origin origin;

    /** Writes on a writer, which stays open. */
    public RankCsv(PrintWriter out, Origin origin) {
        this.csv = new Csv(out);
        this.origin = origin;
    }

    @Override
    public void begin() {
        csv.row(HEADS);
    }

    @Override
    public boolean add(RankAnswer answer) {
        String suffix =
                answer.incompleteBecause().map(b -> " (INCOMPLETE: " + b + ")").orElse("");
        answer.result().unbeaten().forEach(b -> row(answer, "unbeaten" + suffix, b));
        answer.result().listed().forEach(b -> row(answer, "by " + JsonWords.of(answer.order()) + suffix, b));
        answer.incompleteBecause().ifPresent(b -> stopped(answer, b));
        return !answer.result().unbeaten().isEmpty();
    }

    /** A list that was cut short never looks like a whole one, not even an empty list. */
    private void stopped(RankAnswer answer, String because) {
        List<String> cells = new ArrayList<>(Collections.nCopies(HEADS.size(), ""));
        cells.set(0, answer.fitCase().chassis().id());
        cells.set(1, "INCOMPLETE: " + because);
        csv.row(cells);
    }

    private void row(RankAnswer answer, String list, Ranked ranked) {
        Build build = ranked.build();
        Band band = answer.band(build);
        List<String> cells = new ArrayList<>(List.of(
                answer.fitCase().chassis().id(),
                list,
                build.key(),
                build.layout().key(),
                build.layout().stacks().stream().map(StackWords::full).collect(Collectors.joining(" | ")),
                String.join(" ", build.modIds()),
                Mm.rounded(build.outcome().priceCents() / 100.0, 2).toPlainString(),
                answer.fitCase().brief().terms().currency(),
                Mm.rounded(answer.coolantOverRoomK(build), 2).toPlainString(),
                Mm.rounded(band.lowK(), 2).toPlainString(),
                Mm.rounded(band.highK(), 2).toPlainString(),
                Mm.rounded(RankWords.levelDBA(build), 1).toPlainString(),
                Integer.toString(build.outcome().labourMin()),
                Integer.toString(build.outcome().days()),
                Integer.toString(build.bill().visibleCuts()),
                Integer.toString(build.bill().hiddenCuts()),
                JsonWords.of(ranked.witness().tightest().verdict()),
                Mm.text(ranked.witness().tightest().marginHmm()),
                ranked.witness().tightest().one() + " to "
                        + ranked.witness().tightest().other(),
                build.parts().values().stream()
                        .map(ids -> ids.size() + "x " + ids.get(0))
                        .collect(Collectors.joining(" ")),
                origin.brief(),
                origin.catalog(),
                origin.program()));
        Witness witness = ranked.witness();
        cells.addAll(List.of(
                ChanceWords.text(witness.probability()),
                ChanceWords.word(witness.probability()),
                witness.likeliestClash().one() + " to "
                        + witness.likeliestClash().other(),
                Boolean.toString(Confidence.isBelow(
                        witness.probability(),
                        answer.fitCase().brief().limits().mods().confidencePercent()))));
        csv.row(cells);
    }

    @Override
    public void end() {
        // Every row stands by itself.
    }
}

package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loopwright.answer.FitAnswer;
import loopwright.answer.FitList;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.FoundLayout;
import loopwright.fit.Gap;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.UnknownLayout;
import loopwright.fit.Witness;
import loopwright.tolerance.Confidence;

/** What fits, for spreadsheets: one row a layout and needed mod set. */
public final class FitCsv implements FitPaper {

    private static final List<String> HEADS = List.of(
            "chassis",
            "key",
            "stacks",
            "mods",
            "visible_cuts",
            "hidden_cuts",
            "verdict",
            "margin_mm",
            "clearance_mm",
            "need_mm",
            "between",
            "fan_area_cm2",
            "conductance_W_per_K",
            "list",
            "brief",
            "catalog",
            "program",
            "worst_case_mm",
            "rss_mm",
            "fit_probability",
            "chance",
            "likeliest_clash",
            "below_confidence");

    private final Csv csv;
    private final Origin origin;

    /** Writes on a writer, which stays open. */
    public FitCsv(PrintWriter out, Origin origin) {
        this.csv = new Csv(out);
        this.origin = origin;
    }

    @Override
    public void begin() {
        csv.row(HEADS);
    }

    @Override
    public boolean add(FitAnswer answer) {
        List<FoundLayout> fits = answer.fits();
        for (FoundLayout found : fits) {
            if (answer.stopsHere()) {
                break;
            }
            found.needed().forEach(mods -> fit(answer, found.layout(), mods));
        }
        answer.unknown().forEach(u -> unknown(answer, u));
        answer.incompleteBecause().ifPresent(b -> rest(answer, "INCOMPLETE: " + b));
        return !fits.isEmpty();
    }

    private void fit(FitAnswer answer, Layout layout, ModSet mods) {
        Chassis chassis = answer.fitCase().chassis();
        Witness witness = answer.witness(layout, mods);
        Gap gap = witness.tightest();
        row(
                List.of(
                        chassis.id(),
                        layout.key(),
                        stacks(layout),
                        String.join(" ", mods.ids(chassis)),
                        Integer.toString(ModWords.visibleCuts(mods, chassis)),
                        Integer.toString(ModWords.hiddenCuts(mods, chassis)),
                        JsonWords.of(gap.verdict()),
                        Mm.text(gap.marginHmm()),
                        Mm.text(gap.clearanceHmm()),
                        Mm.text(gap.needHmm()),
                        gap.one() + " to " + gap.other(),
                        Integer.toString(FitList.area(layout) / 100),
                        Mm.rounded(answer.conductanceWPerK(layout, mods), 2).toPlainString(),
                        state(answer),
                        origin.brief(),
                        origin.catalog(),
                        origin.program()),
                List.of(
                        Mm.text(gap.worstCaseHmm()),
                        Mm.text(gap.rssHmm()),
                        ChanceWords.text(witness.probability()),
                        ChanceWords.word(witness.probability()),
                        witness.likeliestClash().one() + " to "
                                + witness.likeliestClash().other(),
                        Boolean.toString(Confidence.isBelow(
                                witness.probability(),
                                answer.fitCase().brief().limits().mods().confidencePercent()))));
    }

    private void unknown(FitAnswer answer, UnknownLayout unknown) {
        row(
                List.of(
                        answer.fitCase().chassis().id(),
                        unknown.layout().key(),
                        stacks(unknown.layout()),
                        "",
                        "",
                        "",
                        "unknown",
                        "",
                        "",
                        "",
                        "measure " + String.join(", ", unknown.measure()),
                        Integer.toString(FitList.area(unknown.layout()) / 100),
                        "",
                        state(answer),
                        origin.brief(),
                        origin.catalog(),
                        origin.program()),
                List.of("", "", "", "unknown", "", ""));
    }

    /** A last row that says so when layouts may be missing. */
    private void rest(FitAnswer answer, String why) {
        row(
                List.of(
                        answer.fitCase().chassis().id(),
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "",
                        why,
                        origin.brief(),
                        origin.catalog(),
                        origin.program()),
                List.of("", "", "", "", "", ""));
    }

    private void row(List<String> cells, List<String> sure) {
        csv.row(Stream.concat(cells.stream(), sure.stream()).toList());
    }

    private static String state(FitAnswer answer) {
        return answer.incompleteBecause().isEmpty() ? "complete" : "incomplete";
    }

    private static String stacks(Layout layout) {
        return layout.stacks().stream().map(StackWords::full).collect(Collectors.joining(" | "));
    }

    @Override
    public void end() {
        // Every row carries its origin.
    }
}

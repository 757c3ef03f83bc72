package loopwright.paper;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.UnlockState;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Impossible;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.answer.Unlocks.Unlocked;
import loopwright.answer.Unlocks.Way;

/** What mods unlock, for spreadsheets: one row a mount, radiator class and mod set; or the table of cuts. */
public final class UnlockCsv implements UnlockPaper {

    private static final List<String> FIGURES = List.of(
            "mods",
            "way_back",
            "visible_cuts",
            "hidden_cuts",
            "labour_min",
            "paint_min",
            "days",
            "cost_cents",
            "material_cents",
            "height_added_mm",
            "coolant_gain_K",
            "coolant_gain_low_K",
            "coolant_gain_high_K",
            "conductance_gain_W_per_K",
            "fans",
            "best_layout");

    private final Csv csv;
    private final Origin origin;
    private final UnlockView view;

    /**
     * Writes on a writer, which stays open.
     *
     * @param view tell something else instead
     */
    public UnlockCsv(PrintWriter out, Origin origin, UnlockView view) {
        this.csv = new Csv(out);
        this.origin = origin;
        this.view = view;
    }

    @Override
    public void begin() {
        if (view.cuts().isPresent()) {
            csv.row(CutCsv.HEADS);
            return;
        }
        List<String> heads = new ArrayList<>(List.of("chassis", "mount", "stack", "state"));
        heads.addAll(FIGURES);
        heads.addAll(List.of("shortfall_mm", "blocked_by", "list", "brief", "catalog", "program"));
        csv.row(heads);
    }

    @Override
    public boolean add(UnlockAnswer answer) {
        if (view.layout().isPresent()) {
            List<Way> ways = answer.waysTo(view.layout().get());
            ways.forEach(w -> row(answer, "", view.layout().get(), "layout", figures(answer, w), "", ""));
            answer.incompleteBecause().ifPresent(b -> row(answer, "", "", "incomplete", List.of(), "", b));
            return !ways.isEmpty();
        }
        if (view.cuts().isPresent()) {
            CutCsv.rows(answer, origin, view.cuts().getAsInt()).forEach(csv::row);
        } else {
            answer.mounts().forEach(m -> mount(answer, m));
            answer.incompleteBecause().ifPresent(b -> row(answer, "", "", "incomplete", List.of(), "", b));
        }
        return !answer.fits().fits().isEmpty();
    }

    private void mount(UnlockAnswer answer, AtMount at) {
        String mount = at.frame().mount().id();
        for (RadiatorClass radiator : at.asDelivered()) {
            row(answer, mount, ClassWords.of(radiator), "as-delivered", List.of(), "", "");
        }
        for (Unlocked unlocked : at.unlocked()) {
            for (Way way : unlocked.ways()) {
                row(answer, mount, ClassWords.of(unlocked.stack()), "unlocked", figures(answer, way), "", "");
            }
        }
        for (Impossible each : at.impossible()) {
            UnlockState state = answer.state(at.frame(), each);
            boolean sure = state == UnlockState.IMPOSSIBLE;
            String why = sure
                    ? each.shortfall().blockedBy()
                    : answer.toMeasure(at.frame(), each.stack()).stream()
                            .map(m -> "measure " + m)
                            .collect(Collectors.joining(", "));
            String lacks = sure ? each.shortfall().shortfallHmm().map(Mm::text).orElse("") : "";
            row(answer, mount, ClassWords.of(each.stack()), JsonWords.of(state), List.of(), lacks, why);
        }
    }

    private static List<String> figures(UnlockAnswer answer, Way way) {
        return List.of(
                String.join(" ", way.mods().ids(answer.fitCase().chassis())),
                JsonWords.of(way.bill().wayBack()),
                Integer.toString(way.bill().visibleCuts()),
                Integer.toString(way.bill().hiddenCuts()),
                Integer.toString(way.bill().labourMin()),
                Integer.toString(way.bill().paintMin()),
                Integer.toString(way.days()),
                Long.toString(way.costCents()),
                Long.toString(way.bill().materialCents()),
                Mm.text(way.bill().heightAddedHmm()),
                way.gain().map(g -> two(g.gainK())).orElse(""),
                way.gain().map(g -> two(g.band().lowK())).orElse(""),
                way.gain().map(g -> two(g.band().highK())).orElse(""),
                way.gain().map(g -> two(g.conductanceGainWPerK())).orElse(""),
                way.stacks().stream().map(StackWords::fans).distinct().collect(Collectors.joining("; ")),
                way.best().layout().layout().key());
    }

    private static String two(double value) {
        return Mm.rounded(value, 2).toPlainString();
    }

    private void row(
            UnlockAnswer answer,
            String mount,
            String stack,
            String state,
            List<String> figures,
            String lacks,
            String why) {
        List<String> cells = new ArrayList<>(List.of(answer.fitCase().chassis().id(), mount, stack, state));
        cells.addAll(figures.isEmpty() ? FIGURES.stream().map(f -> "").toList() : figures);
        cells.addAll(List.of(lacks, why, CutCsv.list(answer), origin.brief(), origin.catalog(), origin.program()));
        csv.row(cells);
    }

    @Override
    public void end() {
        // Every row is whole in itself.
    }
}

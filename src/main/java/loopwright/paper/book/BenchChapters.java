package loopwright.paper.book;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.answer.Inspection;
import loopwright.catalog.chassis.Mod;
import loopwright.paper.FastenLines;
import loopwright.paper.FinishPassages;
import loopwright.paper.GanttSvg;
import loopwright.paper.InspectSections;
import loopwright.paper.ScheduleWords;
import loopwright.workshop.drawing.Leaf;
import loopwright.workshop.schedule.Schedule;
import loopwright.workshop.schedule.StageWords;
import loopwright.workshop.template.Finding;
import loopwright.workshop.template.PanelTemplate;

/** What is done at the bench: cuts, screws, paint, runs, wiring, order of assembly, days. */
final class BenchChapters {

    private final WorkPapers papers;

    BenchChapters(WorkPapers papers) {
        this.papers = papers;
    }

    /** The cut list: each panel with what is found of it; the drawings at 1:1 are files of their own. */
    Html cuts() {
        Html html = new Html().table(mods());
        if (papers.templates().all().isEmpty()) {
            html.text("No panel is cut and no hole is drilled in one: there is no template.");
        }
        Rows rows = Rows.headed("panel", "cuts and holes", "seen", "material", "verdict");
        for (PanelTemplate panel : papers.templates().all()) {
            rows.row(
                    panel.id(),
                    String.valueOf(panel.holes().size()),
                    panel.view().words().replace("seen ", ""),
                    material(panel.leaf()),
                    panel.isRefused() ? "REFUSED: do not cut" : panel.findings().isEmpty() ? "sound" : "see below");
        }
        html.table(rows);
        for (PanelTemplate panel : papers.templates().panels()) {
            panel.view()
                    .area(panel.view().panel().flat())
                    .ifPresent(flat -> html.figure(
                            new BeforeAfter(panel, flat).svg(),
                            panel.id() + ", its flat " + panel.view().words() + ": not to cut by, the templates are."));
        }
        papers.templates().nests().forEach((material, nest) -> {
            String title = "Stock of " + material.name().toLowerCase(Locale.ROOT);
            html.figure(
                    new NestPicture(nest).svg(title),
                    title + ": pieces and cuts in their order. "
                            + papers.templates().stock(material).get(0));
        });
        for (PanelTemplate panel : papers.templates().all()) {
            List<String> said = new ArrayList<>();
            panel.findings().forEach(f -> said.add(f.toString()));
            if (!said.isEmpty()) {
                html.heading(panel.id()).list(said);
            }
        }
        html.list(papers.templates().notes().stream().map(Finding::toString).toList());
        if (!papers.templates().all().isEmpty()) {
            html.text(
                    "At true scale: the templates' PDF (print at 100 %, measure the bars), an SVG and a DXF for each.");
        }
        return html;
    }

    /** What is done to the chassis. */
    private Rows mods() {
        Inspection in = papers.inspection();
        String currency = in.fitCase().brief().terms().currency();
        Rows rows = Rows.headed("what is done", "hands, min", "paint, min", "material, " + currency, "can be undone");
        for (Mod mod : in.witness().mods().mods(in.fitCase().chassis())) {
            rows.row(
                    mod.title(),
                    String.valueOf(mod.work().labourMin()),
                    String.valueOf(mod.work().paintMin()),
                    BigDecimal.valueOf(mod.work().materialCents(), 2).toPlainString(),
                    mod.look().wayBack().name().toLowerCase(Locale.ROOT));
        }
        return rows;
    }

    private static String material(Leaf leaf) {
        return leaf.title().title();
    }

    Html screws() {
        Html html = new Html();
        Rows rows = Rows.headed(
                "mount", "holds", "screws", "least", "screw", "allowed, mm", "hole, mm", "left, mm", "under the head");
        FastenLines.rows(papers.fasteners()).forEach(r -> rows.row(r.toArray(String[]::new)));
        html.table(rows);
        Rows fixed = Rows.headed("holds", "screws", "screw", "note");
        FastenLines.fixedRows(papers.fasteners()).forEach(r -> fixed.row(r.toArray(String[]::new)));
        html.table(fixed);
        html.list(FastenLines.remarks(papers.fasteners()));
        html.caution(FastenLines.CARE);
        return html;
    }

    Html finish() {
        Html html = new Html().passages(FinishPassages.of(papers.finish()));
        FinishPassages.CARE.forEach(html::caution);
        return html;
    }

    Html runs() {
        Html html = new Html();
        InspectSections.plumbing(papers.answer())
                .forEach((title, passages) -> html.heading(title).passages(passages));
        return html;
    }

    Html wiring() {
        Html html = new Html().heading("Power").passages(InspectSections.power(papers.answer()));
        html.heading("Cables").passages(InspectSections.cables(papers.answer()));
        return html.heading("Drives").passages(InspectSections.drives(papers.answer()));
    }

    Html assembly() {
        return new AssemblyChapter(papers.plan().assembly()).html();
    }

    Html schedule() {
        Schedule schedule = papers.plan().schedule();
        Html html = new Html();
        html.text("Begins " + schedule.start() + ", done "
                + minute(schedule.finish().at().toString()) + ": "
                + (schedule.finish().proven()
                        ? "no order of the tasks is done earlier."
                        : "not proven; nothing is done before "
                                + minute(schedule.finish().notBefore().toString()) + ".")
                + " With hands enough: "
                + minute(schedule.finish().withHandsEnough().toString()) + ".");
        StringWriter svg = new StringWriter();
        try (PrintWriter out = new PrintWriter(svg)) {
            new GanttSvg(schedule).write(out);
        }
        html.figure(
                svg.toString(),
                "One pair of hands; waits thin; dark: what the end hangs on; shaded: days without work.");
        html.list(ScheduleWords.TASKS);
        Rows rows = Rows.headed("task", "begins", "ends", "hands, min", "spare, min", "");
        for (Schedule.Row row : schedule.rows()) {
            rows.row(
                    row.task().title(),
                    minute(row.begin().toString()),
                    minute(row.end().toString()),
                    String.valueOf(row.task().busyMin()),
                    String.valueOf(row.spareMin()),
                    row.critical() ? "the end hangs on it" : "");
        }
        html.table(rows);
        Rows parts = Rows.headed("part", "comes", "needed", "latest order", "slack, days", "if a week late, done");
        for (Schedule.Arrival arrival : schedule.arrivals()) {
            parts.row(
                    arrival.item().part().id(),
                    arrival.arrives().toString(),
                    minute(arrival.needed().toString()),
                    arrival.latestOrder().toString(),
                    String.valueOf(arrival.slackDays()),
                    minute(arrival.ifAWeekLate().toString()));
        }
        html.heading("Parts").list(ScheduleWords.PARTS).table(parts);
        schedule.rows().stream()
                .map(r -> StageWords.caution(r.task().stage()))
                .filter(c -> !c.isBlank())
                .distinct()
                .forEach(html::caution);
        return html;
    }

    private static String minute(String iso) {
        return iso.replace('T', ' ').toLowerCase(Locale.ROOT);
    }
}

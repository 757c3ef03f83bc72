package loopwright.paper.book;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.answer.cable.CablePlan;
import loopwright.paper.FastenLines;
import loopwright.paper.FinishLines;
import loopwright.paper.GanttSvg;
import loopwright.paper.InspectSections;
import loopwright.workshop.assembly.Assembly;
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
        Html html = new Html();
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
        html.text(
                "At true scale: templates-a4.pdf (print at 100 %, measure the bars), an SVG and a DXF for each panel.");
        return html;
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
        Html html = new Html().lines(FinishLines.of(papers.finish()));
        FinishLines.CARE.forEach(html::caution);
        return html;
    }

    Html runs() {
        Html html = new Html();
        InspectSections.plumbing(papers.answer())
                .forEach((title, lines) -> html.heading(title).lines(lines));
        return html;
    }

    Html wiring() {
        Html html = new Html().heading("Power").lines(InspectSections.power(papers.answer()));
        boolean known = papers.answer().cables().map(CablePlan::feeds).isPresent();
        html.heading("Cables")
                .lines(known ? InspectSections.cables(papers.answer()) : List.of("Nothing is known of cables."));
        return html.heading("Drives").lines(InspectSections.drives(papers.answer()));
    }

    Html assembly() {
        Assembly assembly = papers.plan().assembly();
        Html html = new Html();
        Rows rows = Rows.headed("step", "part", "at the dry fits", "after paint");
        int step = 1;
        for (Assembly.Step one : assembly.steps()) {
            rows.row(String.valueOf(step++), one.title(), one.dry(), one.paintedAndWet());
        }
        html.table(rows);
        if (!assembly.deadlock().isEmpty()) {
            html.caution("These block each other, whichever goes first: " + String.join(", ", assembly.deadlock())
                    + ". Try it with the parts themselves or card dummies before anything is cut.");
        }
        html.heading("To service a part");
        Rows out = Rows.headed("part", "comes out first", "loop");
        for (Assembly.Service one : assembly.services()) {
            out.row(
                    one.title(),
                    one.possible()
                            ? (one.first().isEmpty() ? "nothing" : String.join(", ", one.first()))
                            : "no way out along the axes: try it by hand",
                    one.drain() ? "drain" : "stays full");
        }
        return html.table(out).list(assembly.notes());
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
        html.figure(svg.toString(), "One pair of hands; waits thin; dark: what the end hangs on.");
        Rows rows = Rows.headed("task", "begins", "ends", "hands, min", "spare, min", "hangs");
        for (Schedule.Row row : schedule.rows()) {
            rows.row(
                    row.task().title(),
                    minute(row.begin().toString()),
                    minute(row.end().toString()),
                    String.valueOf(row.task().handsMin()),
                    String.valueOf(row.spareMin()),
                    row.critical() ? "the end" : "");
        }
        html.table(rows);
        Rows parts =
                Rows.headed("part", "comes", "needed", "order at the latest", "slack, days", "if a week late, done");
        for (Schedule.Arrival arrival : schedule.arrivals()) {
            parts.row(
                    arrival.item().part().id(),
                    arrival.arrives().toString(),
                    minute(arrival.needed().toString()),
                    arrival.latestOrder().toString(),
                    String.valueOf(arrival.slackDays()),
                    minute(arrival.ifAWeekLate().toString()));
        }
        html.heading("Parts").table(parts);
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

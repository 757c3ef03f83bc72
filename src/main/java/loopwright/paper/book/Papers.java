package loopwright.paper.book;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import loopwright.paper.IcsWriter;
import loopwright.paper.Manifest;
import loopwright.paper.OrderCsv;
import loopwright.paper.Origin;
import loopwright.paper.sheet.DrawingDxf;
import loopwright.paper.sheet.SheetPdf;
import loopwright.paper.sheet.SheetSvg;
import loopwright.workshop.drawing.Leaf;
import loopwright.workshop.drawing.Paper;
import loopwright.workshop.drawing.Sheets;
import loopwright.workshop.template.PanelTemplate;
import loopwright.workshop.template.Templates;

/** Every paper of a build by its file's name: the book and what belongs to it. The same build gives the same bytes. */
public final class Papers {

    /** Those that every set has. */
    public static final List<String> ALWAYS =
            List.of("book.html", "index.html", "orders.csv", Manifest.NAME, "schedule.ics");

    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private final SortedMap<String, String> titles = new TreeMap<>();

    /** The papers of a build; templates on the paper that the workshop prints on. */
    public Papers(WorkPapers papers, Paper paper, Origin origin) {
        add("book.html", "The book: quote, drawings, lists, checks, all on one page", new Book(papers, origin).html());
        templates(papers, paper, origin);
        String key = papers.inspection().build().key();
        String currency = papers.quote().sums().currency();
        add(
                "orders.csv",
                "What to order, for a spreadsheet",
                text(out -> OrderCsv.write(out, papers.plan().orders(), currency)));
        add(
                "schedule.ics",
                "The days, for a calendar",
                text(out -> new IcsWriter(
                                out,
                                new IcsWriter.Job(
                                        papers.inspection().fitCase().brief().id(), key))
                        .write(papers.plan().schedule(), papers.plan().orders())));
        titles.put(
                Manifest.NAME,
                "What the set consists of: sha256sum --check " + Manifest.NAME
                        + " tells whether a file is missing or was changed");
        index(papers, origin);
        files.put(Manifest.NAME, Manifest.of(files).bytes());
    }

    private void templates(WorkPapers papers, Paper paper, Origin origin) {
        List<PanelTemplate> all = papers.templates().all();
        if (all.isEmpty()) {
            return;
        }
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        List<Leaf> leaves = papers.templates().leaves();
        String key = papers.inspection().build().key();
        SheetPdf.write("Templates of build " + key, key + " " + origin.line(), Sheets.on(paper, leaves), pdf);
        String name = "templates-" + paper.name().toLowerCase(Locale.ROOT) + ".pdf";
        titles.put(name, "Cut and drill templates at 1:1: print at 100 %, measure the bars");
        files.put(name, pdf.toByteArray());
        for (PanelTemplate panel : all) {
            String file = "template-" + panel.id().replaceAll("[^A-Za-z0-9]+", "-");
            String what = panel.isRefused() ? "REFUSED, do not cut: " : "";
            add(
                    file + ".svg",
                    what + "the same in millimetres, for a screen or a plotter",
                    text(out -> SheetSvg.write(Sheets.whole(panel.leaf()), out)));
            add(
                    file + ".dxf",
                    what + "the same for whoever cuts it: layers CUT and DRILL",
                    text(out -> DrawingDxf.write(panel.leaf(), out)));
        }
        stock(papers.templates());
    }

    private void stock(Templates templates) {
        templates
                .nestLeaves()
                .forEach((material, leaf) -> add(
                        "stock-" + material.name().toLowerCase(Locale.ROOT) + ".svg",
                        "How inserts are cut from stock, and in which order",
                        text(out -> SheetSvg.write(Sheets.whole(leaf), out))));
    }

    private static String text(Consumer<PrintWriter> writes) {
        StringWriter text = new StringWriter();
        try (PrintWriter out = new PrintWriter(text)) {
            writes.accept(out);
        }
        return text.toString();
    }

    private void index(WorkPapers papers, Origin origin) {
        Html html = new Html();
        html.text("Build " + papers.inspection().build().key() + ". From " + origin.line() + ".");
        StringBuilder links = new StringBuilder("<ul>\n");
        for (Map.Entry<String, String> each : titles.entrySet()) {
            links.append("<li><a href=\"")
                    .append(each.getKey())
                    .append("\">")
                    .append(each.getKey())
                    .append("</a>: ")
                    .append(Html.escaped(each.getValue()))
                    .append("</li>\n");
        }
        links.append("</ul>\n");
        String title = papers.inspection().fitCase().brief().title();
        add(
                "index.html",
                "This list",
                Html.page(title, "<h1>" + Html.escaped(title) + "</h1>\n" + html.body() + links));
    }

    private void add(String name, String title, String text) {
        titles.put(name, title);
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** What each of them is, in words. */
    public SortedMap<String, String> titles() {
        return java.util.Collections.unmodifiableSortedMap(titles);
    }

    /** The files. */
    public SortedMap<String, byte[]> all() {
        return java.util.Collections.unmodifiableSortedMap(files);
    }
}

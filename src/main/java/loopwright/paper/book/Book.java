package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.Inspection;
import loopwright.fit.FitCase;
import loopwright.paper.InspectSections;
import loopwright.paper.Mm;
import loopwright.paper.Origin;
import loopwright.rank.Build;

/**
 * The book of a build: what goes to the bench and what the client signs, on one page that needs nothing else.
 *
 * <p>Everything in it comes from the one build; nothing is typed twice.
 */
public final class Book {

    private static final double CENTS = 100;

    private final WorkPapers papers;
    private final Inspection in;
    private final Origin origin;
    private final List<Chapter> chapters = new ArrayList<>();

    /** For whom a chapter is. */
    private enum Reader {
        /** Who pays, and signs. */
        CLIENT("For the client"),
        /** Who builds. */
        BENCH("For the bench");

        private final String words;

        Reader(String words) {
            this.words = words;
        }
    }

    /**
     * A chapter.
     *
     * @param id what it is linked by
     * @param body of the page, without its heading
     */
    private record Chapter(Reader reader, String id, String title, String body) {}

    /** The book of a build. */
    public Book(WorkPapers papers, Origin origin) {
        this.papers = papers;
        this.in = papers.inspection();
        this.origin = origin;
        build();
    }

    private void build() {
        BuildChapters built = new BuildChapters(papers);
        MoneyChapters money = new MoneyChapters(papers);
        add(Reader.CLIENT, "quote", "Quote", money.quote());
        add(Reader.CLIENT, "offers", "Offers side by side", money.offers());
        add(Reader.CLIENT, "views", "How it stands", built.views());
        add(Reader.CLIENT, "brief", "The brief, line by line", built.brief());
        if (!papers.unbeaten().isEmpty()) {
            add(Reader.CLIENT, "choice", "Among what could be built", built.choice());
        }
        add(Reader.CLIENT, "care", "Handover and care", new Html().list(Checks.care(in)));
        BenchChapters bench = new BenchChapters(papers);
        add(Reader.BENCH, "clearances", "Clearances, the tightest " + BuildChapters.GAPS, built.clearances());
        add(Reader.BENCH, "loop", "The loop", built.loop());
        add(Reader.BENCH, "mass", "Mass, feet, lifting", built.mass());
        add(Reader.BENCH, "orders", "Order list", money.orders());
        add(Reader.BENCH, "schedule", "Schedule", bench.schedule());
        add(Reader.BENCH, "cuts", "Cut list", bench.cuts());
        add(Reader.BENCH, "screws", "Screws", bench.screws());
        add(Reader.BENCH, "runs", "Tube: runs, filling, bleeding, draining", bench.runs());
        add(Reader.BENCH, "wiring", "Wiring", bench.wiring());
        add(Reader.BENCH, "assembly", "Order of assembly, and of service", bench.assembly());
        add(Reader.BENCH, "finish", "Paint and colours", bench.finish());
        add(Reader.BENCH, "from-rank", "From the ranking's price to the quote", money.fromRank());
        add(
                Reader.BENCH,
                "dry-fit-1",
                "Check list: dry fit before cutting",
                new Html().ticks(Checks.beforeCutting(in)));
        add(Reader.BENCH, "dry-fit-2", "Check list: dry fit before paint", new Html().ticks(Checks.beforePaint(in)));
        add(Reader.BENCH, "leak-test", "Check list: leak test", new Html().ticks(Checks.leakTest()));
        add(Reader.BENCH, "test-sheet", "Test sheet", new Html().table(Checks.testSheet(in)));
    }

    private void add(Reader reader, String id, String title, Html html) {
        chapters.add(new Chapter(reader, id, chapters.size() + 1 + ". " + title, html.body()));
    }

    /** The whole page. */
    public String html() {
        StringBuilder out = new StringBuilder(head());
        for (Reader reader : Reader.values()) {
            out.append(new Html().heading(reader.words).body()).append("<nav><ul>\n");
            of(reader)
                    .forEach(c -> out.append("<li><a href=\"#")
                            .append(c.id())
                            .append("\">")
                            .append(Html.escaped(c.title()))
                            .append("</a></li>\n"));
            out.append("</ul></nav>\n");
        }
        for (Reader reader : Reader.values()) {
            out.append(new Html().part(reader.words).body());
            of(reader)
                    .forEach(c -> out.append(
                                    new Html().section(c.id(), c.title()).body())
                            .append(c.body()));
        }
        return Html.page(in.fitCase().brief().title() + ", " + in.build().key(), out.toString());
    }

    private List<Chapter> of(Reader reader) {
        return chapters.stream().filter(c -> c.reader() == reader).toList();
    }

    private String head() {
        FitCase fitCase = in.fitCase();
        Build build = in.build();
        Html body = new Html();
        body.text("For " + fitCase.brief().client() + ". " + fitCase.chassis().title() + ", build " + build.key() + ": "
                + money(papers.quote().sums().grossCents()) + " by the quote, coolant "
                + Mm.rounded(in.state().water().meanC(), 1) + " +-"
                + Mm.rounded(in.coolantBand().halfK(), 1) + " C at full load in a room of "
                + Mm.rounded(fitCase.brief().limits().roomC(), 0) + " C, "
                + Mm.rounded(build.outcome().labourMin() / 60.0, 1) + " hands-on hours, handover "
                + papers.plan().schedule().finish().at().toLocalDate() + " if it begins "
                + papers.plan().schedule().start() + ".");
        body.text("From " + origin.line() + ". Dimensions are nominal until they are measured. Fits: "
                + InspectSections.chance(papers.answer()) + ".");
        List<String> against = Against.of(papers);
        body.heading("What stands against this build");
        if (against.isEmpty()) {
            body.text("Nothing that these papers can see. Dry fits and the leak test still decide.");
        }
        against.forEach(body::caution);
        body.heading("Care");
        Checks.cautions().forEach(body::caution);
        return "<h1>" + Html.escaped(fitCase.brief().title()) + "</h1>\n" + body.body();
    }

    private String money(long cents) {
        return Mm.rounded(cents / CENTS, 0).toPlainString() + " "
                + in.fitCase().brief().terms().currency();
    }
}

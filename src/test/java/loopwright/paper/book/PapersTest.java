package loopwright.paper.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.paper.Manifest;
import loopwright.paper.Origin;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import loopwright.workshop.drawing.Paper;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Every paper of every brief of ours: pages that a parser reads, links that lead somewhere, the same bytes twice. */
class PapersTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    /** 210 mm in points of 1/72 inch, ISO 216. */
    private static final float A4_WIDTH_PT = 595.28f;

    private static final LocalDate MONDAY = LocalDate.of(2027, 1, 11);

    private static RankAnswer ranking(String scenario) {
        Brief brief = CatalogReader.readBrief(Path.of("scenarios/" + scenario + ".yaml"), CATALOG);
        FitCase fitCase = new FitCase(CATALOG, CATALOG.chassis(brief.chassis().get(0)), brief);
        return new RankAnswer(
                fitCase,
                FitWish.ALL,
                new RankAnswer.RankWish(Order.COST, 1, java.util.Optional.empty()),
                java.util.Optional::empty);
    }

    /** Papers of the first unbeaten build of each brief, made once. */
    private static final Map<String, SortedMap<String, byte[]>> MADE = new HashMap<>();

    private static SortedMap<String, byte[]> papers(String scenario) {
        return MADE.computeIfAbsent(scenario, s -> {
            RankAnswer ranking = ranking(s);
            return papers(ranking, ranking.result().unbeaten().get(0));
        });
    }

    private static SortedMap<String, byte[]> papers(RankAnswer ranking, Ranked build) {
        InspectAnswer answer = new InspectAnswer(new Inspection(ranking.fitCase(), build));
        return new Papers(
                        WorkPapers.of(answer, ranking, MONDAY),
                        Paper.A4,
                        Origin.of("loopwright test", CATALOG, ranking.fitCase().brief()))
                .all();
    }

    private static Document parsed(byte[] page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        DocumentBuilder builder = factory.newDocumentBuilder();
        return builder.parse(new ByteArrayInputStream(page));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"demo", "micro", "no-visible-cuts", "quiet-above-all", "slim-desk", "small-box", "tight-budget"})
    void everyBriefGetsItsPapers(String scenario) throws Exception {
        SortedMap<String, byte[]> papers = papers(scenario);

        assertThat(papers).containsKeys("book.html", "index.html", "orders.csv", "schedule.ics");
        Document index = parsed(bytes(papers, "index.html"));
        NodeList links = index.getElementsByTagName("a");
        Set<String> named = new HashSet<>();
        for (int i = 0; i < links.getLength(); i++) {
            named.add(((Element) links.item(i)).getAttribute("href"));
        }
        named.add("index.html");
        assertThat(papers).containsKeys(Papers.ALWAYS.toArray(String[]::new));
        Manifest listed = Manifest.read(new String(bytes(papers, Manifest.NAME), StandardCharsets.UTF_8));
        assertThat(listed).isEqualTo(Manifest.of(papers));
        assertThat(listed.sums()).hasSize(papers.size() - 1);
        assertThat(named).isEqualTo(papers.keySet());
        assertThat(papers.keySet()).allMatch(name -> name.matches("[a-z0-9-]+\\.[a-z0-9]+"));
        for (var paper : papers.entrySet()) {
            if (paper.getKey().endsWith(".pdf")) {
                try (PDDocument pdf = Loader.loadPDF(paper.getValue())) {
                    assertThat(pdf.getNumberOfPages()).isPositive();
                    assertThat(text(pdf)).contains("100 mm", "seen from OUTSIDE");
                }
            } else if (paper.getKey().endsWith(".svg")) {
                assertThat(parsed(paper.getValue()).getDocumentElement().getTagName())
                        .isEqualTo("svg");
            }
        }
        Brief brief = CatalogReader.readBrief(Path.of("scenarios/" + scenario + ".yaml"), CATALOG);
        new BookFigures(parsed(bytes(papers, "book.html"))).check(scenario, brief.limits(), MONDAY);
        bookStandsByItself(parsed(bytes(papers, "book.html")), bytes(papers, "book.html"));
    }

    private static void bookStandsByItself(Document book, byte[] page) {
        Set<String> ids = new HashSet<>();
        NodeList all = book.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            String id = ((Element) all.item(i)).getAttribute("id");
            if (!id.isEmpty()) {
                assertThat(ids.add(id)).as("id %s once", id).isTrue();
            }
        }
        NodeList links = book.getElementsByTagName("a");
        assertThat(links.getLength()).isGreaterThan(15);
        for (int i = 0; i < links.getLength(); i++) {
            String href = ((Element) links.item(i)).getAttribute("href");
            assertThat(ids).contains(href.substring(1));
        }
        assertThat(book.getElementsByTagName("svg").getLength()).isGreaterThanOrEqualTo(5);
        String text = new String(page, StandardCharsets.UTF_8).replace("http://www.w3.org/2000/svg", "");
        assertThat(text).doesNotContain("http:", "https:", "<script", "src=");
    }

    @ParameterizedTest
    @ValueSource(strings = "slim-desk")
    void theSameBuildGivesTheSameBytes(String scenario) {
        RankAnswer again = ranking(scenario);
        SortedMap<String, byte[]> one = papers(scenario);
        SortedMap<String, byte[]> other =
                papers(again, again.result().unbeaten().get(0));

        assertThat(one.keySet()).isEqualTo(other.keySet());
        one.forEach((name, bytes) ->
                assertThat(Arrays.equals(bytes, other.get(name))).as(name).isTrue());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"demo", "micro", "no-visible-cuts", "quiet-above-all", "slim-desk", "small-box", "tight-budget"})
    void everyBookIsLaidOutAndPrinted(String scenario, @TempDir Path folder) throws Exception {
        assumeTrue(Browser.isInstalled(), "no Chromium here: the book is not laid out");
        byte[] book = bytes(papers(scenario), "book.html");
        Browser browser = new Browser(folder);

        assertThat(browser.probed(book)).isEqualTo("sound");
        try (PDDocument pdf = Loader.loadPDF(browser.printed(book))) {
            assertThat(pdf.getNumberOfPages()).isBetween(10, 40);
            assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(A4_WIDTH_PT, within(1f));
            String printed = text(pdf).replaceAll("\\s+", " ");
            NodeList heads = parsed(book).getElementsByTagName("h2");
            assertThat(heads.getLength()).isGreaterThan(15);
            for (int i = 0; i < heads.getLength(); i++) {
                assertThat(printed).contains(heads.item(i).getTextContent());
            }
        }
    }

    private static String text(PDDocument pdf) throws java.io.IOException {
        return new PDFTextStripper().getText(pdf);
    }

    private static byte[] bytes(SortedMap<String, byte[]> papers, String name) {
        return java.util.Objects.requireNonNull(papers.get(name));
    }
}

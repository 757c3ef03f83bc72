package loopwright.paper.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.brief.BriefLimits;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The figures of a printed book, read back from its tables: do they add up, and does page one say what is wrong? */
final class BookFigures {

    private final Document book;
    private final String text;

    BookFigures(Document book) {
        this.book = book;
        this.text = book.getDocumentElement().getTextContent();
    }

    void check(String as, BriefLimits limits, LocalDate start) {
        addsUp(as);
        BigDecimal pay = new BigDecimal(beside("to pay"));
        boolean over = limits.budgetCents()
                .map(b -> pay.compareTo(BigDecimal.valueOf(b, 2)) > 0)
                .orElse(false);
        assertThat(text.contains("over the budget of")).as(as + " budget").isEqualTo(over);
        assertThat(text.contains("is REFUSED: too little metal stays"))
                .as(as + " refused")
                .isEqualTo(cells().stream().anyMatch("REFUSED: do not cut"::equals));
        long blocked = cells().stream().filter(c -> c.startsWith("BLOCKED by")).count();
        assertThat(text.contains("tube runs find no way")).as(as + " blocked").isEqualTo(blocked > 0);
        if (blocked > 0) {
            assertThat(text).contains(blocked + " of ");
        }
        String from = "handover ";
        LocalDate handover = LocalDate.parse(text.substring(
                text.indexOf(from) + from.length(), text.indexOf(from) + from.length() + "2027-01-01".length()));
        boolean late = limits.leadMaxDays()
                .map(d -> ChronoUnit.DAYS.between(start, handover) > d)
                .orElse(false);
        assertThat(text.contains("days after the start, the brief allows"))
                .as(as + " days")
                .isEqualTo(late);
    }

    /** Parts, material, labour and contingency to the net; net and tax to what is paid; deposit and rest to that. */
    private void addsUp(String as) {
        BigDecimal goods = sum(table("for", "part"), 4);
        assertThat(goods)
                .as(as + " parts")
                .isEqualByComparingTo(new BigDecimal(beside("parts")).add(new BigDecimal(beside("material"))));
        assertThat(sum(table("stage", "low, h"), 4)).as(as + " labour").isEqualByComparingTo(beside("labour"));
        List<List<String>> sums = table("what", null);
        int net = rowOf(sums, "net");
        BigDecimal all = BigDecimal.ZERO;
        for (int i = 0; i < net; i++) {
            all = all.add(new BigDecimal(sums.get(i).get(1)));
        }
        assertThat(all).as(as + " net").isEqualByComparingTo(beside("net"));
        BigDecimal tax = new BigDecimal(sums.get(net + 1).get(1));
        assertThat(all.add(tax)).as(as + " to pay").isEqualByComparingTo(beside("to pay"));
        assertThat(new BigDecimal(beside("of that as a deposit, before anything is ordered"))
                        .add(new BigDecimal(beside("the rest, before it is handed over"))))
                .as(as + " deposit and rest")
                .isEqualByComparingTo(beside("to pay"));
        BigDecimal steps = BigDecimal.ZERO;
        for (List<String> row : chapterTable("from-rank")) {
            steps = steps.add(new BigDecimal(row.get(1)));
        }
        assertThat(steps).as(as + " from the ranking's price").isEqualByComparingTo(all);
    }

    private static int rowOf(List<List<String>> rows, String head) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).get(0).equals(head)) {
                return i;
            }
        }
        throw new AssertionError("no row " + head);
    }

    private static BigDecimal sum(List<List<String>> rows, int column) {
        return rows.stream().map(r -> new BigDecimal(r.get(column))).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private String beside(String head) {
        List<List<String>> sums = table("what", null);
        return sums.get(rowOf(sums, head)).get(1);
    }

    /** The first table with these first heads. */
    private List<List<String>> table(String first, @org.jspecify.annotations.Nullable String second) {
        NodeList tables = book.getElementsByTagName("table");
        for (int i = 0; i < tables.getLength(); i++) {
            NodeList heads = ((Element) tables.item(i)).getElementsByTagName("th");
            if (heads.item(0).getTextContent().equals(first)
                    && (second == null || heads.item(1).getTextContent().equals(second))) {
                return rows((Element) tables.item(i));
            }
        }
        throw new AssertionError("no table " + first);
    }

    /** The first table after a chapter's heading. */
    private List<List<String>> chapterTable(String id) {
        NodeList all = book.getElementsByTagName("*");
        boolean here = false;
        for (int i = 0; i < all.getLength(); i++) {
            Element one = (Element) all.item(i);
            here |= one.getAttribute("id").equals(id);
            if (here && one.getTagName().equals("table")) {
                return rows(one);
            }
        }
        throw new AssertionError("no table in " + id);
    }

    private static List<List<String>> rows(Element table) {
        List<List<String>> out = new ArrayList<>();
        NodeList rows = ((Element) table.getElementsByTagName("tbody").item(0)).getElementsByTagName("tr");
        for (int r = 0; r < rows.getLength(); r++) {
            NodeList cells = ((Element) rows.item(r)).getElementsByTagName("td");
            List<String> row = new ArrayList<>();
            for (int c = 0; c < cells.getLength(); c++) {
                row.add(cells.item(c).getTextContent());
            }
            out.add(row);
        }
        return out;
    }

    private List<String> cells() {
        List<String> out = new ArrayList<>();
        NodeList cells = book.getElementsByTagName("td");
        for (int i = 0; i < cells.getLength(); i++) {
            out.add(cells.item(i).getTextContent());
        }
        return out;
    }
}

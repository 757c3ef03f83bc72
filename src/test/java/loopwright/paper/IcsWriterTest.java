package loopwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.rank.Order;
import loopwright.workshop.assembly.Assembly;
import loopwright.workshop.money.OrderList;
import loopwright.workshop.schedule.Schedule;
import loopwright.workshop.schedule.ScheduleWish;
import org.junit.jupiter.api.Test;

/** Calendar files by RFC 5545, read by an independent library; and what the other papers of a schedule say. */
class IcsWriterTest {

    private static final Inspection BUILD = build();

    private static Inspection build() {
        Catalog catalog = CatalogReader.read(Path.of("catalogs"));
        var brief = CatalogReader.readBrief(Path.of("scenarios/slim-desk.yaml"), catalog);
        FitCase fitCase = new FitCase(catalog, catalog.chassis(brief.chassis().get(0)), brief);
        RankAnswer answer = new RankAnswer(
                fitCase, FitWish.ALL, new RankAnswer.RankWish(Order.COST, 1, Optional.empty()), Optional::empty);
        return new Inspection(fitCase, answer.result().unbeaten().get(0));
    }

    private static final Schedule SCHEDULE = Schedule.of(BUILD, ScheduleWish.from(LocalDate.of(2026, 3, 2)));
    private static final OrderList ORDERS = OrderList.of(SCHEDULE, 5);

    private static String ics() {
        StringWriter out = new StringWriter();
        new IcsWriter(
                        new PrintWriter(out),
                        new IcsWriter.Job("slim-desk", BUILD.build().key()))
                .write(SCHEDULE, ORDERS);
        return out.toString();
    }

    @Test
    void anIndependentReaderFindsNothingWrong() {
        ICalendar calendar = Biweekly.parse(ics()).first();
        assertThat(calendar.validate(ICalVersion.V2_0).isEmpty())
                .as(calendar.validate(ICalVersion.V2_0).toString())
                .isTrue();
        Set<String> uids = new HashSet<>();
        for (VEvent event : calendar.getEvents()) {
            assertThat(uids.add(event.getUid().getValue())).isTrue();
            assertThat(event.getDateTimeStamp()).isNotNull();
            assertThat(event.getDateEnd().getValue())
                    .isAfter(event.getDateStart().getValue());
        }
        int pieces = SCHEDULE.rows().stream().mapToInt(r -> r.pieces().size()).sum();
        int waits = (int) SCHEDULE.rows().stream()
                .filter(r -> r.task().taken().restMin() > 0)
                .count();
        assertThat(calendar.getEvents()).hasSize(ORDERS.lines().size() + pieces + waits);
        assertThat(pieces).as("a task goes on the next morning").isGreaterThan((int)
                SCHEDULE.rows().stream().filter(r -> !r.pieces().isEmpty()).count());
    }

    /** Work keeps somebody busy within a day; waits and order days do not: RFC 5545 section 3.8.2.7. */
    @Test
    void workIsOpaqueAndOfOneDayWaitsAreTransparent() {
        int waits = 0;
        for (VEvent event : Biweekly.parse(ics()).first().getEvents()) {
            String summary = event.getSummary().getValue();
            assertThat(summary).startsWith("slim-desk " + BUILD.build().key() + ": ");
            boolean wait = summary.contains(": wait: ");
            boolean order = summary.contains(": order ");
            assertThat(event.getTransparency().isTransparent()).as(summary).isEqualTo(wait || order);
            waits += wait ? 1 : 0;
            if (!wait && !order) {
                assertThat(event.getDateStart().getValue().getRawComponents().getDate())
                        .as(summary)
                        .isEqualTo(
                                event.getDateEnd().getValue().getRawComponents().getDate());
            }
        }
        assertThat(waits).isGreaterThanOrEqualTo(3);
    }

    @Test
    void linesEndInCrLfAndHoldAtMost75Octets() {
        String ics = ics();
        assertThat(ics.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(ics.split("\r\n")).allMatch(l -> l.getBytes(StandardCharsets.UTF_8).length <= 75);
        assertThat(ics()).isEqualTo(ics);
    }

    @Test
    void foldingTakesNothingAwayAndSparesALineOf75() {
        assertThat(IcsWriter.folded("x".repeat(75))).isEqualTo("x".repeat(75));
        assertThat(IcsWriter.folded("x".repeat(76))).isEqualTo("x".repeat(75) + "\r\n x");
        SplittableRandom dice = new SplittableRandom(7);
        for (int i = 0; i < 300; i++) {
            StringBuilder text = new StringBuilder();
            for (int k = dice.nextInt(200); k > 0; k--) {
                text.appendCodePoint(dice.nextInt(3) == 0 ? 0x1F600 + dice.nextInt(40) : 0xE0 + dice.nextInt(30));
            }
            String folded = IcsWriter.folded(text.toString());
            assertThat(folded.replace("\r\n ", "")).isEqualTo(text.toString());
            assertThat(folded.split("\r\n")).allMatch(l -> l.getBytes(StandardCharsets.UTF_8).length <= 75);
        }
    }

    @Test
    void textIsEscapedBackslashFirst() {
        assertThat(IcsWriter.text("a\\b;c,d\ne")).isEqualTo("a\\\\b\\;c\\,d\\ne");
    }

    @Test
    void theOtherPapersSayWhatTheScheduleSays() {
        StringWriter svg = new StringWriter();
        new GanttSvg(SCHEDULE).write(new PrintWriter(svg));
        assertThat(svg.toString()).startsWith("<svg").contains("dry fit").endsWith("</svg>" + System.lineSeparator());
        StringWriter csv = new StringWriter();
        OrderCsv.write(new PrintWriter(csv), ORDERS, "EUR");
        assertThat(csv.toString().split("\r\n")).hasSize(ORDERS.lines().size() + 2);
        assertThat(ORDERS.totalCents())
                .isEqualTo(
                        loopwright.rank.Bill.of(BUILD.fitCase(), BUILD.build()).boughtCents());
        for (OrderList.Line line : ORDERS.lines()) {
            assertThat(line.orderBy()).isBeforeOrEqualTo(line.need().minusDays(line.leadDays() + 6L));
            assertThat(List.of(line.orderBy(), line.latest()))
                    .as(line.part().id())
                    .allMatch(d -> d.getDayOfWeek().getValue() <= 5);
        }
        Assembly assembly = Assembly.of(BUILD);
        assertThat(assembly.deadlock()).isEmpty();
        assertThat(assembly.services())
                .extracting(Assembly.Service::id)
                .doesNotHaveDuplicates()
                .contains("board", "card", "supply");
    }

    @Test
    void aLatePartDelaysTheEndOnlyBeyondItsSlack() {
        for (Schedule.Arrival arrival : SCHEDULE.arrivals()) {
            boolean later = arrival.ifAWeekLate().isAfter(SCHEDULE.finish().at());
            assertThat(later).as(arrival.item().role()).isEqualTo(arrival.slackDays() < 7);
        }
    }
}

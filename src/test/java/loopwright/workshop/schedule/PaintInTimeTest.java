package loopwright.workshop.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.standard.WorkStage;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import loopwright.workshop.finish.CoatPlan.Coat;
import loopwright.workshop.schedule.Schedule.Arrival;
import loopwright.workshop.schedule.Schedule.Row;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The plans of the shipped briefs: coats inside the recoat window or after the lock-out (one hour, 48 hours: from memory, as many
 * single-component cans say), the test piece before paint, orders on working days, parts there when they are handled.
 */
class PaintInTimeTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));
    private static final long WITHIN_MIN = 60;
    private static final long AFTER_MIN = 48 * 60;

    private static List<Schedule> schedules(String name) {
        var brief = CatalogReader.readBrief(Path.of("scenarios/" + name + ".yaml"), CATALOG);
        List<Schedule> out = new ArrayList<>();
        for (String chassis : brief.chassis()) {
            FitCase fitCase = new FitCase(CATALOG, CATALOG.chassis(chassis), brief);
            List<Ranked> builds = new RankAnswer(
                            fitCase,
                            FitWish.ALL,
                            new RankAnswer.RankWish(Order.COST, 1, Optional.empty()),
                            Optional::empty)
                    .result()
                    .unbeaten();
            // One build for each set of mods: paint asks for no more.
            Set<Object> seen = new HashSet<>();
            for (Ranked ranked : builds) {
                if (seen.add(ranked.build().mods())) {
                    Schedule schedule = Schedule.of(
                            new Inspection(fitCase, ranked), new ScheduleWish(LocalDate.of(2026, 3, 7), Set.of(), 200));
                    out.add(schedule);
                }
            }
        }
        return out;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"demo", "micro", "no-visible-cuts", "quiet-above-all", "slim-desk", "small-box", "tight-budget"})
    void noCoatFallsIntoTheForbiddenTime(String name) {
        List<Schedule> all = schedules(name);
        assertThat(all).isNotEmpty();
        for (Schedule schedule : all) {
            coats(schedule);
            parts(schedule);
            assertThat(schedule.rows()).allMatch(r -> r.spareMin() >= 0).anyMatch(Row::critical);
        }
    }

    private record Sprayed(String group, Coat coat, LocalDateTime begin, LocalDateTime end) {}

    private static void coats(Schedule schedule) {
        List<Sprayed> coats = new ArrayList<>();
        for (Row row : schedule.rows()) {
            if (row.task().stage() == WorkStage.TEST_PIECE) {
                schedule.rows().stream()
                        .filter(r -> r.task().stage() == WorkStage.PREP)
                        .forEach(r ->
                                assertThat(r.begin()).isAfterOrEqualTo(row.end().plusDays(2)));
                continue;
            }
            List<Coat> its = row.task().taken().coats();
            LocalDateTime at = row.begin();
            for (int i = 0; i < its.size(); i++) {
                assertThat(row.pieces()).as(row.task().id()).hasSize(1);
                int spray = row.task().handsMin() * (i + 1) / its.size()
                        - row.task().handsMin() * i / its.size();
                String group = row.task().id().replaceFirst("^[a-z]+:", "");
                coats.add(new Sprayed(group, its.get(i), at, at.plusMinutes(spray)));
                at = at.plusMinutes(spray + (its.get(i).last() ? 0 : its.get(i).flashMin()));
            }
            if (!its.isEmpty()) {
                assertThat(at).as(row.task().id()).isBeforeOrEqualTo(row.end());
            }
        }
        for (int i = 0; i + 1 < coats.size(); i++) {
            Sprayed one = coats.get(i);
            Sprayed next = coats.stream()
                    .skip(i + 1L)
                    .filter(c -> c.group().equals(one.group()))
                    .findFirst()
                    .orElse(null);
            if (next != null) {
                long gap = Duration.between(one.end(), next.begin()).toMinutes();
                if (one.coat().last()) {
                    assertThat(gap)
                            .as(one + " is dry before it is sanded")
                            .isGreaterThanOrEqualTo(one.coat().dryMin());
                } else {
                    assertThat(gap).as(one + " then " + next).isGreaterThanOrEqualTo(5);
                    assertThat(gap <= WITHIN_MIN || gap >= AFTER_MIN)
                            .as(one + " then " + next)
                            .isTrue();
                }
            }
        }
    }

    private static void parts(Schedule schedule) {
        for (Arrival arrival : schedule.arrivals()) {
            String id = arrival.item().part().id();
            assertThat(schedule.calendar().isWorkingDay(arrival.latestOrder()))
                    .as(id)
                    .isTrue();
            if (arrival.item().part().buy().leadDays() > 0) {
                assertThat(arrival.needed().toLocalDate()).as(id).isAfter(arrival.arrives());
            }
            if (Set.of("fittings", "tube").contains(arrival.item().role())) {
                assertThat(arrival.task()).as("on the first dry fit's list").isEqualTo("dry-fit");
            }
            if (arrival.item().role().equals("coolant")) {
                assertThat(arrival.task()).isEqualTo("fill");
            }
        }
    }
}

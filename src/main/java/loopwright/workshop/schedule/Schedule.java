package loopwright.workshop.schedule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import loopwright.answer.Inspection;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.WorkCalendar;
import loopwright.catalog.standard.Workshop;
import loopwright.fit.FitCase;
import loopwright.rank.Bill;

/**
 * When a build is done: every task, every part's arrival, what the end hangs on.
 *
 * @param start the day on which parts are ordered and work may begin
 * @param plan tasks and what comes before what
 * @param rows the tasks in the order in which they begin
 * @param finish when it is done, and how sure that nothing is earlier
 * @param arrivals what is bought: when it comes, when it is needed, what happens if it is late
 * @param critical what the end hangs on, from the start to the end
 */
public record Schedule(
        LocalDate start,
        WorkPlan plan,
        List<Row> rows,
        Finish finish,
        List<Arrival> arrivals,
        List<CriticalLink> critical) {

    /** A task with its time; {@code spareMin}: working minutes it could begin later if there were hands enough. */
    public record Row(WorkTask task, LocalDateTime begin, LocalDateTime end, int spareMin, boolean critical) {}

    /**
     * The end.
     *
     * @param at when the last task is done
     * @param proven whether no order of the tasks ends earlier; else {@code notBefore} is the bound
     * @param notBefore the moment before which no schedule of this kind ends
     * @param withHandsEnough the end if there were always hands enough
     * @param handsMin hands-on minutes
     */
    public record Finish(
            LocalDateTime at, boolean proven, LocalDateTime notBefore, LocalDateTime withHandsEnough, int handsMin) {}

    /**
     * Something that is bought.
     *
     * @param arrives if it is ordered on the first day
     * @param needed when the task that needs it begins, and which that is
     * @param slackDays by which it may be late without a later end; at most {@link Lateness#MOST_DAYS}
     * @param latestOrder the last day to order it without a later end, nothing kept in hand
     * @param ifAWeekLate the end if it comes seven days late
     */
    public record Arrival(
            Bill.Bought item,
            LocalDate arrives,
            LocalDateTime needed,
            String task,
            int slackDays,
            LocalDate latestOrder,
            LocalDateTime ifAWeekLate) {}

    /** A task on the way to the end, and what it had to wait for. */
    public record CriticalLink(String task, WaitedFor waitedFor, String what) {}

    /** What a task had to wait for. */
    public enum WaitedFor {
        /** Nothing: it begins at once. */
        START,
        /** Another task, and its wait. */
        TASK,
        /** The one pair of hands. */
        HANDS,
        /** A part that comes. */
        ARRIVAL
    }

    /** Copies. */
    public Schedule {
        rows = List.copyOf(rows);
        arrivals = List.copyOf(arrivals);
        critical = List.copyOf(critical);
    }

    /**
     * The schedule of a build.
     *
     * @throws IllegalArgumentException if practice.yaml says nothing of the workshop, or a mod cannot be decided late
     */
    public static Schedule of(Inspection inspection, ScheduleWish wish) {
        return of(inspection, Bill.of(inspection.fitCase(), inspection.build()).bought(), wish);
    }

    /**
     * The schedule of a build.
     *
     * @param items what is bought for it
     */
    public static Schedule of(Inspection inspection, List<Bill.Bought> items, ScheduleWish wish) {
        FitCase fitCase = inspection.fitCase();
        Brief brief = fitCase.brief();
        Workshop practice = practice(fitCase);
        WorkPlan plan = WorkPlans.of(fitCase, inspection.build(), wish.late());
        Clock clock = clock(brief, practice, wish.start());
        return of(plan, items, clock, wish);
    }

    /** What practice.yaml says of the workshop. */
    public static Workshop practice(FitCase fitCase) {
        return fitCase.catalog()
                .practice()
                .workshop()
                .orElseThrow(() -> new IllegalArgumentException(
                        "shared/practice.yaml: workshop: found nothing, allowed a map of shares, waits and spreads. A schedule"
                                + " and a quote are made of them."));
    }

    private static Clock clock(Brief brief, Workshop practice, LocalDate start) {
        WorkCalendar calendar = brief.calendar().orElse(WorkCalendar.USUAL);
        int dayMin = BigDecimal.valueOf(brief.terms().workHPerDay())
                .multiply(BigDecimal.valueOf(60))
                .setScale(0, RoundingMode.FLOOR)
                .intValueExact();
        return new Clock(start, calendar::isWorkingDay, practice.dayStartsH() * 60, dayMin);
    }

    static Schedule of(WorkPlan plan, List<Bill.Bought> items, Clock clock, ScheduleWish wish) {
        Map<String, Integer> leads = new TreeMap<>();
        items.forEach(i -> leads.merge(neededBy(i), i.part().buy().leadDays(), Math::max));
        Network network = plan.network(t -> clock.arrival(leads.getOrDefault(t.id(), 0)));
        Handwork work = Handwork.of(network, clock, wish.nodes());
        List<String> broken = RuleCheck.broken(plan.tasks(), work.timing().starts());
        if (!broken.isEmpty()) {
            throw new IllegalStateException("a schedule that breaks the trade's rules: " + broken);
        }
        List<CriticalLink> critical = Chain.of(network, clock, work.timing());
        List<Row> rows = rows(plan, clock, network, work.timing(), critical);
        Lateness lateness = new Lateness(network, clock, work.timing().end(), wish.nodes());
        List<Arrival> arrivals = new ArrayList<>();
        for (Bill.Bought item : items) {
            int task = plan.indexOf(neededBy(item));
            int lead = item.part().buy().leadDays();
            int slack = lateness.slackDays(task, lead);
            arrivals.add(new Arrival(
                    item,
                    wish.start().plusDays(lead),
                    clock.begin(work.timing().starts().get(task)),
                    neededBy(item),
                    slack,
                    wish.start().plusDays(slack),
                    clock.end(lateness.end(task, lead + 7))));
        }
        CriticalPath path = CriticalPath.of(network, clock);
        Finish finish = new Finish(
                clock.end(work.timing().end()),
                work.proven(),
                clock.end(work.proven() ? work.timing().end() : work.leastEnd()),
                clock.end(path.end()),
                plan.handsMin());
        return new Schedule(wish.start(), plan, rows, finish, arrivals, critical);
    }

    /** The first task that something bought is needed for: the real parts for the dry fit, what is wet later. */
    static String neededBy(Bill.Bought item) {
        return switch (item.role()) {
            case "case" -> "strip";
            case "tube", "fittings" -> "plumb";
            case "coolant" -> "fill";
            default -> "dry-fit";
        };
    }

    private static List<Row> rows(
            WorkPlan plan, Clock clock, Network network, Timing timing, List<CriticalLink> critical) {
        List<Integer> latest = CriticalPath.latestFor(network, clock, timing.end());
        return IntStream.range(0, plan.tasks().size())
                .boxed()
                .sorted((i, j) ->
                        Integer.compare(timing.starts().get(i), timing.starts().get(j)))
                .map(i -> {
                    WorkTask task = plan.tasks().get(i);
                    int start = timing.starts().get(i);
                    LocalDateTime end = clock.end(start + task.steps());
                    return new Row(
                            task,
                            task.steps() == 0 ? end : clock.begin(start),
                            end,
                            (latest.get(i) - start) * Clock.STEP_MIN,
                            critical.stream().anyMatch(c -> c.task().equals(task.id())));
                })
                .toList();
    }

    /** The row of a task, if there is one. */
    public Optional<Row> find(String task) {
        return rows.stream().filter(r -> r.task().id().equals(task)).findFirst();
    }
}

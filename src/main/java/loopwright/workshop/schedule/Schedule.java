package loopwright.workshop.schedule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
 * @param start the day from which parts are ordered and work may begin
 * @param calendar the days that are worked, and on which orders go out
 * @param plan tasks and what comes before what
 * @param rows the tasks in the order in which they begin
 * @param finish when it is done, and how sure that nothing is earlier
 * @param arrivals what is bought, in the order of the bill
 */
public record Schedule(
        LocalDate start, WorkCalendar calendar, WorkPlan plan, List<Row> rows, Finish finish, List<Arrival> arrivals) {

    private static final int MIN_PER_H = 60;

    /**
     * A task with its time.
     *
     * @param pieces the same, day by day; none where nobody works
     * @param spareMin working minutes it could begin later with the same end, the order of the hands kept
     */
    public record Row(WorkTask task, LocalDateTime begin, LocalDateTime end, List<Clock.Piece> pieces, int spareMin) {
        /** Copies. */
        public Row {
            pieces = List.copyOf(pieces);
        }

        /** Whether the end hangs on it. */
        public boolean critical() {
            return spareMin == 0;
        }
    }

    /**
     * The end.
     *
     * @param at when the last task is done
     * @param proven whether no order of the tasks ends earlier; else {@code notBefore} is the bound
     * @param notBefore the moment before which no schedule of this kind ends
     * @param withHandsEnough the end if there were always hands enough
     * @param handsMin hands-on minutes, coats' flashes among them
     */
    public record Finish(
            LocalDateTime at, boolean proven, LocalDateTime notBefore, LocalDateTime withHandsEnough, int handsMin) {}

    /**
     * Something that is bought.
     *
     * @param arrives the day it comes, if it is ordered on the first working day; usable from the next start of work
     * @param needed when the task that needs it begins, and which that is
     * @param slackDays by which it may be late without a later end; at most {@link Lateness#MOST_DAYS}
     * @param latestOrder the last working day to order it without a later end when the rest is planned anew
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

    /** Copies. */
    public Schedule {
        rows = List.copyOf(rows);
        arrivals = List.copyOf(arrivals);
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
        WorkCalendar calendar = brief.calendar().orElse(WorkCalendar.USUAL);
        Clock clock = new Clock(wish.start(), calendar::isWorkingDay, practice.dayStartsH() * MIN_PER_H, dayMin(brief));
        plan.fitsADay(clock);
        Network network = plan.network(t -> 0);
        Deliveries deliveries = new Deliveries(wish.start(), calendar, clock);
        Network supplied = deliveries.needed(plan, network, items);
        Handwork work = Handwork.of(supplied, clock, wish.nodes());
        List<String> broken = new RuleCheck(
                        clock, fitCase.catalog().practice().finishing().cure())
                .broken(plan.tasks(), work.timing().starts());
        if (!broken.isEmpty()) {
            throw new IllegalStateException("a schedule that breaks the trade's rules: " + broken);
        }
        Lateness lateness = new Lateness(supplied, clock, work.timing().end(), wish.nodes());
        return new Schedule(
                wish.start(),
                calendar,
                plan,
                rows(plan, clock, supplied, work.timing()),
                finish(plan, clock, supplied, work),
                deliveries.arrivals(plan, items, work.timing(), lateness));
    }

    private static Finish finish(WorkPlan plan, Clock clock, Network network, Handwork work) {
        return new Finish(
                clock.end(work.timing().end()),
                work.proven(),
                clock.end(work.proven() ? work.timing().end() : work.leastEnd()),
                clock.end(CriticalPath.of(network, clock).end()),
                plan.tasks().stream().mapToInt(WorkTask::busyMin).sum());
    }

    /** Minutes of a working day. */
    static int dayMin(Brief brief) {
        return BigDecimal.valueOf(brief.terms().workHPerDay())
                .multiply(BigDecimal.valueOf(MIN_PER_H))
                .setScale(0, RoundingMode.FLOOR)
                .intValueExact();
    }

    /** The day on which an order goes out that has to be out by a day: a working day. */
    public LocalDate orderDay(LocalDate by) {
        return calendar.onOrBefore(by);
    }

    /** The day on which the first orders go out. */
    public LocalDate firstOrderDay() {
        return calendar.onOrAfter(start);
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

    private static List<Row> rows(WorkPlan plan, Clock clock, Network network, Timing timing) {
        List<Integer> spare = Spare.of(network, clock, timing);
        return IntStream.range(0, plan.tasks().size())
                .boxed()
                .sorted(Comparator.comparing(timing.starts()::get))
                .map(i -> {
                    WorkTask task = plan.tasks().get(i);
                    int start = timing.starts().get(i);
                    LocalDateTime end = clock.end(start + task.steps());
                    return new Row(
                            task,
                            task.steps() == 0 ? end : clock.begin(start),
                            end,
                            clock.pieces(start, task.steps()),
                            spare.get(i) * Clock.STEP_MIN);
                })
                .toList();
    }

    /** The row of a task, if there is one. */
    public Optional<Row> find(String task) {
        return rows.stream().filter(r -> r.task().id().equals(task)).findFirst();
    }
}

package loopwright.workshop.schedule;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.brief.WorkCalendar;
import loopwright.rank.Bill;
import loopwright.workshop.schedule.Schedule.Arrival;

/** When what is bought comes: ordered on working days, there its lead time later, usable from the next start of work. */
record Deliveries(LocalDate start, WorkCalendar calendar, Clock clock) {

    /** Days that a part is late when it is asked what that does. */
    private static final int WEEK = 7;

    /** The first task that something bought is needed for: all but coolant is handled at the first whole dry fit. */
    static String neededBy(Bill.Bought item) {
        return switch (item.role()) {
            case "case" -> "strip";
            case "coolant" -> "fill";
            default -> "dry-fit";
        };
    }

    /** Days after the first on which something comes that is ordered as early as can be; 0: it is there. */
    private int days(Bill.Bought item) {
        int lead = item.part().buy().leadDays();
        int firstOrder = (int) ChronoUnit.DAYS.between(start, calendar.onOrAfter(start));
        return lead == 0 ? 0 : firstOrder + lead;
    }

    /** The network with what each task needs. */
    Network needed(WorkPlan plan, Network network, List<Bill.Bought> items) {
        List<Job> jobs = new ArrayList<>(network.jobs());
        for (Bill.Bought item : items) {
            int task = plan.indexOf(neededBy(item));
            Job job = jobs.get(task);
            jobs.set(task, job.from(Math.max(job.fromStep(), clock.arrival(days(item)))));
        }
        return new Network(jobs, network.links());
    }

    /** What is bought, with what its lateness does. */
    List<Arrival> arrivals(WorkPlan plan, List<Bill.Bought> items, Timing timing, Lateness lateness) {
        LocalDate first = calendar.onOrAfter(start);
        List<Arrival> out = new ArrayList<>();
        for (Bill.Bought item : items) {
            int task = plan.indexOf(neededBy(item));
            int slack = lateness.slackDays(task, days(item));
            out.add(new Arrival(
                    item,
                    start.plusDays(days(item)),
                    clock.begin(timing.starts().get(task)),
                    neededBy(item),
                    slack,
                    calendar.onOrBefore(first.plusDays(slack)),
                    clock.end(lateness.end(task, days(item) + WEEK))));
        }
        return List.copyOf(out);
    }
}

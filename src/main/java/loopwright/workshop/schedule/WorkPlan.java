package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;

/** Tasks, what comes before what and why. */
public record WorkPlan(List<WorkTask> tasks, List<Before> before) {

    /**
     * One task before another.
     *
     * @param waitMin minutes between them, through nights and days off
     */
    public record Before(String first, String then, int waitMin, WorkRule rule) {}

    /** Copies. */
    public WorkPlan {
        tasks = List.copyOf(tasks);
        before = List.copyOf(before);
    }

    /** The place of a task. */
    public int indexOf(String id) {
        for (int i = 0; i < tasks.size(); i++) {
            if (tasks.get(i).id().equals(id)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no task " + id);
    }

    /** The plan with only some of what comes before what. */
    WorkPlan keeping(Predicate<Before> kept) {
        return new WorkPlan(tasks, before.stream().filter(kept).toList());
    }

    /** The plan with one more. */
    WorkPlan with(Before more) {
        List<Before> all = new ArrayList<>(before);
        all.add(more);
        return new WorkPlan(tasks, all);
    }

    /** Refuses coats that no day has room for: a night would fall into their recoat window. */
    void fitsADay(Clock clock) {
        for (WorkTask task : tasks) {
            if (!task.taken().coats().isEmpty() && task.steps() > clock.daySteps()) {
                throw new DayTooShortException("terms.work_h_per_day: found " + clock.daySteps() * Clock.STEP_MIN
                        + " min, allowed at least the " + task.busyMin() + " min of \"" + task.title()
                        + "\", whose coats go on in one go");
            }
        }
    }

    /** All hands-on minutes that the build's price counts. */
    public int handsMin() {
        return tasks.stream().mapToInt(WorkTask::handsMin).sum();
    }

    /**
     * What the solver is asked.
     *
     * @param fromStep the first step at which all that a task needs is there
     */
    Network network(ToIntFunction<WorkTask> fromStep) {
        List<Job> jobs = tasks.stream()
                .map(t -> new Job(t.id(), t.steps(), t.unbroken(), fromStep.applyAsInt(t)))
                .toList();
        List<Network.Link> links = before.stream()
                .map(b -> new Network.Link(
                        indexOf(b.first()), indexOf(b.then()), b.waitMin(), b.rule() == WorkRule.COATS_AT_ONCE))
                .toList();
        return new Network(jobs, links);
    }
}

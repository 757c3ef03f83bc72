package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.WorkStage;
import loopwright.catalog.standard.Workshop;
import loopwright.workshop.schedule.WorkPlan.Before;
import loopwright.workshop.schedule.WorkTask.Taken;

/** Makes the tasks of a build: the stages of any build, what its mods take, what is painted. */
final class WorkPlanner {

    private static final int MIN_PER_H = 60;
    private static final int MIN_PER_DAY = 24 * MIN_PER_H;

    private final Workshop practice;
    private final List<ModWork> mods;
    private final List<WorkTask> tasks = new ArrayList<>();
    private final List<Before> before = new ArrayList<>();

    private WorkPlanner(Workshop practice, List<ModWork> mods) {
        this.practice = practice;
        this.mods = mods;
    }

    /** The plan. */
    static WorkPlan plan(Commission commission, Workshop practice, Finishing finishing) {
        List<ModWork> work = commission.work();
        for (ModWork one : work) {
            if (one.late() && !one.loose()) {
                throw new IllegalArgumentException("mod " + one.mod().id()
                        + " cannot be decided after the build: only a window in a side panel can, the rest would be cut with"
                        + " electronics inside");
            }
        }
        WorkPlanner planner = new WorkPlanner(practice, work);
        planner.stages(commission.assemblyMin());
        work.forEach(planner::mod);
        planner.paint(new PaintWork(practice, finishing, commission.dayMin()));
        return new WorkPlan(planner.tasks, planner.before);
    }

    private boolean fittedTwice() {
        return mods.stream().anyMatch(m -> !m.late());
    }

    private String fitted() {
        return fittedTwice() ? "second-dry-fit" : "dry-fit";
    }

    private void stages(int assemblyMin) {
        Map<WorkStage, Integer> minutes = new EnumMap<>(Minutes.divided(assemblyMin, practice.assembly()));
        if (!fittedTwice()) {
            minutes.merge(
                    WorkStage.DRY_FIT,
                    Optional.ofNullable(minutes.remove(WorkStage.SECOND_DRY_FIT))
                            .orElse(0),
                    Integer::sum);
        }
        WorkStage last = null;
        for (Map.Entry<WorkStage, Integer> stage : minutes.entrySet()) {
            String id = id(stage.getKey());
            tasks.add(new WorkTask(
                    id,
                    stage.getKey(),
                    StageWords.of(stage.getKey()),
                    new Taken(stage.getValue(), List.of(), restAfter(stage.getKey())),
                    Set.of(),
                    Optional.empty(),
                    false));
            if (last != null) {
                add(id(last), id, restAfter(last), WorkRule.STAGES_FOLLOW);
            }
            last = stage.getKey();
        }
    }

    private int restAfter(WorkStage stage) {
        return switch (stage) {
            case AIR_TEST -> practice.waits().airTestMin();
            case LEAK_WATCH -> practice.waits().leakWatchH() * MIN_PER_H;
            case BURN_IN -> practice.waits().burnInH() * MIN_PER_H;
            default -> 0;
        };
    }

    static String id(WorkStage stage) {
        return stage.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private void add(String first, String then, int waitMin, WorkRule rule) {
        before.add(new Before(first, then, waitMin, rule));
    }

    private void mod(ModWork mod) {
        if (mod.cuts()) {
            Map<WorkStage, Integer> minutes = Minutes.divided(mod.mod().work().labourMin(), practice.mod());
            minutes.forEach((stage, min) -> modTask(mod, id(stage), stage, min));
            add(mod.task("mark"), mod.task("cut"), 0, WorkRule.STAGES_FOLLOW);
            add(mod.task("cut"), mod.task("deburr"), 0, WorkRule.STAGES_FOLLOW);
        } else {
            WorkStage stage = mod.unscrews() ? WorkStage.STRIP : WorkStage.ASSEMBLE;
            modTask(mod, "fit", stage, mod.mod().work().labourMin());
        }
        if (mod.late()) {
            add("burn-in", mod.firstTask(), 0, WorkRule.DECIDED_LATE);
            add(mod.lastTask(), "handover", mod.paints() ? 0 : waitMin(mod), WorkRule.STAGES_FOLLOW);
        } else {
            inTime(mod);
        }
    }

    private void modTask(ModWork mod, String word, WorkStage stage, int minutes) {
        String doing = mod.cuts()
                ? StageWords.of(stage) + ": " + mod.mod().title()
                : mod.mod().title();
        boolean sets = mod.task(word).equals(mod.lastTask()) && !mod.paints();
        Taken taken = new Taken(minutes, List.of(), sets ? waitMin(mod) : 0);
        tasks.add(new WorkTask(mod.task(word), stage, doing, taken, mod.parts(), mod.modId(), mod.loose()));
    }

    private void inTime(ModWork mod) {
        if (mod.unscrews()) {
            add("measure", mod.firstTask(), 0, WorkRule.STAGES_FOLLOW);
            add(mod.lastTask(), "dry-fit", 0, WorkRule.STAGES_FOLLOW);
        } else {
            add("dry-fit", mod.firstTask(), 0, WorkRule.STAGES_FOLLOW);
        }
        add(mod.lastTask(), "second-dry-fit", mod.paints() ? 0 : waitMin(mod), WorkRule.SECOND_FIT_AFTER_CUTS);
        if (mod.cuts() && !mod.loose()) {
            add(mod.task("cut"), "assemble", 0, WorkRule.NO_CUT_WITH_ELECTRONICS);
        }
        for (ModWork other : mods) {
            boolean outFirst = other.takesOut() && !other.late() && mod.cuts() && !mod.takesOut();
            if (outFirst) {
                add(other.lastTask(), mod.firstTask(), 0, WorkRule.TAKE_OUT_FIRST);
            }
            if (mod.mod().rules().requires().contains(other.mod().id()) && !other.late()) {
                add(other.lastTask(), mod.firstTask(), 0, WorkRule.NEEDED_MOD_FIRST);
            }
        }
    }

    private static int waitMin(ModWork mod) {
        return mod.mod().work().waitDays() * MIN_PER_DAY;
    }

    private void paint(PaintWork paint) {
        for (boolean late : new boolean[] {false, true}) {
            List<PaintGroup> groups =
                    PaintGroup.of(mods.stream().filter(m -> m.late() == late).toList());
            paint.paint(groups, late);
            groups.forEach(this::paintAfter);
            if (late && !groups.isEmpty()) {
                add("burn-in", PaintWork.testId(true), 0, WorkRule.DECIDED_LATE);
            }
        }
        tasks.addAll(paint.tasks());
        before.addAll(paint.before());
    }

    private void paintAfter(PaintGroup group) {
        String prep = PaintWork.prep(group);
        for (ModWork mod : mods) {
            boolean own = !Collections.disjoint(mod.parts(), group.parts());
            if (own && mod.late() == group.late()) {
                add(mod.lastTask(), prep, 0, WorkRule.CUT_BEFORE_OWN_PAINT);
            }
        }
        if (!group.late()) {
            add(fitted(), prep, 0, WorkRule.DRY_FIT_BEFORE_PAINT);
        }
    }
}

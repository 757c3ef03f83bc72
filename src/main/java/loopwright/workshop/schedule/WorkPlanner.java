package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.standard.WorkStage;
import loopwright.catalog.standard.Workshop;
import loopwright.workshop.schedule.WorkPlan.Before;

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

    /**
     * The plan.
     *
     * @param assemblyMin hands-on minutes of a build without any mod
     * @param late ids of mods that are decided after the build; only windows in sides can be
     */
    static WorkPlan plan(Chassis chassis, List<Mod> mods, int assemblyMin, Workshop practice, Set<String> late) {
        List<ModWork> work = mods.stream()
                .map(m -> ModWork.of(chassis, m, late.contains(m.id())))
                .toList();
        for (ModWork one : work) {
            if (one.late() && !one.loose()) {
                throw new IllegalArgumentException("mod " + one.mod().id()
                        + " cannot be decided after the build: only a window in a side panel can, the rest would be cut with"
                        + " electronics inside");
            }
        }
        WorkPlanner planner = new WorkPlanner(practice, work);
        planner.stages(assemblyMin);
        work.forEach(planner::mod);
        PaintGroup.of(work.stream().filter(m -> !m.late()).toList()).forEach(planner::paint);
        PaintGroup.of(work.stream().filter(ModWork::late).toList()).forEach(planner::paint);
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
                    stage.getValue(),
                    Set.of(),
                    Optional.empty(),
                    false));
            if (last != null) {
                add(id(last), id, waitAfter(last), WorkRule.STAGES_FOLLOW);
            }
            last = stage.getKey();
        }
    }

    private int waitAfter(WorkStage stage) {
        return switch (stage) {
            case AIR_TEST -> practice.waits().airTestMin();
            case LEAK_WATCH -> practice.waits().leakWatchH() * MIN_PER_H;
            case BURN_IN -> practice.waits().burnInH() * MIN_PER_H;
            case PREP -> practice.waits().degreaseMin();
            case PRIME -> practice.waits().sandH() * MIN_PER_H;
            case COLOUR -> practice.waits().flashMin();
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
        tasks.add(new WorkTask(mod.task(word), stage, doing, minutes, mod.parts(), mod.modId(), mod.loose()));
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

    private void paint(PaintGroup group) {
        Map<WorkStage, Integer> minutes = Minutes.divided(group.paintMin(), practice.paint());
        String last = "";
        WorkStage lastStage = WorkStage.PREP;
        for (Map.Entry<WorkStage, Integer> stage : minutes.entrySet()) {
            String id = id(stage.getKey()) + ":" + group.id();
            paintTask(group, id, stage.getKey(), stage.getValue());
            if (!last.isEmpty()) {
                add(last, id, waitAfter(lastStage), WorkRule.STAGES_FOLLOW);
            }
            last = id;
            lastStage = stage.getKey();
        }
        String cure = "cure:" + group.id();
        paintTask(group, cure, WorkStage.CURE, 0);
        add(last, cure, 0, WorkRule.STAGES_FOLLOW);
        int cureMin = Math.max(group.waitDays() * MIN_PER_DAY, practice.waits().cureH() * MIN_PER_H);
        add(cure, group.late() ? "handover" : "assemble", cureMin, WorkRule.PAINT_HARD_BEFORE_ASSEMBLY);
        String prep = "prep:" + group.id();
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

    private void paintTask(PaintGroup group, String id, WorkStage stage, int minutes) {
        String title = StageWords.of(stage) + ": " + group.words();
        tasks.add(new WorkTask(id, stage, title, minutes, group.parts(), Optional.empty(), group.loose()));
    }
}

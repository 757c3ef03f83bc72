package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.catalog.standard.WorkStage;
import loopwright.catalog.standard.Workshop;
import loopwright.workshop.finish.CoatPlan.Coat;
import loopwright.workshop.schedule.WorkPlan.Before;
import loopwright.workshop.schedule.WorkTask.Taken;

/** The tasks of paint: a test piece, then for each group of parts prep, coats, cure, and what comes between. */
final class PaintWork {

    private static final int MIN_PER_H = 60;
    private static final int MIN_PER_DAY = 24 * MIN_PER_H;

    private final Workshop practice;
    private final Finishing finishing;
    private final int dayMin;
    private final List<WorkTask> tasks = new ArrayList<>();
    private final List<Before> before = new ArrayList<>();

    PaintWork(Workshop practice, Finishing finishing, int dayMin) {
        this.practice = practice;
        this.finishing = finishing;
        this.dayMin = dayMin;
    }

    List<WorkTask> tasks() {
        return List.copyOf(tasks);
    }

    List<Before> before() {
        return List.copyOf(before);
    }

    /** The test piece of some groups and all their tasks; those decided late by themselves. */
    void paint(List<PaintGroup> groups, boolean late) {
        if (groups.isEmpty()) {
            return;
        }
        Set<Surface> surfaces = new HashSet<>();
        groups.forEach(g -> surfaces.addAll(g.surfaces()));
        PaintStages stages = PaintStages.of(finishing, surfaces);
        String id = testId(late);
        int minutes = groups.stream()
                .mapToInt(g -> divided(g).getOrDefault(WorkStage.TEST_PIECE, 0))
                .sum();
        tasks.add(new WorkTask(
                id,
                WorkStage.TEST_PIECE,
                StageWords.of(WorkStage.TEST_PIECE),
                new Taken(minutes, stages.testCoats(), stages.plan().testMin()),
                Set.of(),
                Optional.empty(),
                late));
        for (PaintGroup group : groups) {
            before.add(new Before(id, prep(group), stages.plan().testMin(), WorkRule.TEST_PIECE_BEFORE_PAINT));
            group(group);
        }
    }

    static String testId(boolean late) {
        return late ? "test-piece:late" : "test-piece";
    }

    static String prep(PaintGroup group) {
        return "prep:" + group.id();
    }

    private Map<WorkStage, Integer> divided(PaintGroup group) {
        return Minutes.divided(group.paintMin(), practice.paint());
    }

    private void group(PaintGroup group) {
        PaintStages stages = PaintStages.of(finishing, group.surfaces());
        Map<WorkStage, Integer> minutes = divided(group);
        WorkTask last = task(
                group,
                WorkStage.PREP,
                "",
                new Taken(
                        minutes.getOrDefault(WorkStage.PREP, 0),
                        List.of(),
                        stages.plan().prepMin()));
        int steps = 0;
        Map<WorkStage, Integer> sprayed = new EnumMap<>(stages.sprayed(minutes));
        for (Map.Entry<WorkStage, Integer> stage : sprayed.entrySet()) {
            List<Coat> coats = stages.coats(stage.getKey());
            boolean flatted = last.taken().restMin() > 0 && last.stage() != WorkStage.PREP;
            WorkTask next = task(
                    group,
                    stage.getKey(),
                    flatted ? "flat the primer, " : "",
                    new Taken(stage.getValue(), coats, stages.dryMin(stage.getKey())));
            steps = coatAfter(stages, last, next, steps);
            last = next;
        }
        int cureMin = Math.max(
                group.waitDays() * MIN_PER_DAY, (int) Math.ceil(finishing.cure().assembleH() * MIN_PER_H));
        WorkTask cure = task(group, WorkStage.CURE, "", new Taken(0, List.of(), cureMin));
        before.add(new Before(last.id(), cure.id(), 0, WorkRule.STAGES_FOLLOW));
        before.add(new Before(
                cure.id(), group.late() ? "handover" : "assemble", cureMin, WorkRule.PAINT_HARD_BEFORE_ASSEMBLY));
    }

    /**
     * Over a coat that is not sanded the next one goes on at once, where a day has room for all that goes on so, else after the
     * lock-out.
     *
     * @param steps of all that went on in one go up to the last task
     * @return the same up to the next one
     */
    private int coatAfter(PaintStages stages, WorkTask last, WorkTask next, int steps) {
        if (!stages.goesOn(last.stage())) {
            before.add(new Before(last.id(), next.id(), last.taken().restMin(), WorkRule.STAGES_FOLLOW));
            return next.steps();
        }
        if ((steps + next.steps()) * Clock.STEP_MIN <= dayMin) {
            before.add(new Before(last.id(), next.id(), 0, WorkRule.COATS_AT_ONCE));
            return steps + next.steps();
        }
        int lockedMin = (int) Math.ceil(finishing.cure().recoatAfterH() * MIN_PER_H);
        before.add(new Before(last.id(), next.id(), lockedMin, WorkRule.STAGES_FOLLOW));
        return next.steps();
    }

    private WorkTask task(PaintGroup group, WorkStage stage, String first, Taken taken) {
        String id = WorkPlanner.id(stage) + ":" + group.id();
        String title = first + StageWords.of(stage) + ": " + group.words();
        WorkTask task = new WorkTask(id, stage, title, taken, group.parts(), Optional.empty(), group.loose());
        tasks.add(task);
        return task;
    }
}

package loopwright.workshop.schedule;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loopwright.catalog.standard.Finishing.Cure;
import loopwright.catalog.standard.WorkStage;

/**
 * Looks at a finished schedule and says which rules of the trade it breaks. It knows the tasks and the recoat window, and nothing
 * of what the planner put before what.
 */
record RuleCheck(Clock clock, Cure cure) {

    private static final double MIN_PER_H = 60;

    /** What is broken, as sentences; none: nothing. */
    List<String> broken(List<WorkTask> tasks, List<Integer> starts) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            for (int j = 0; j < tasks.size(); j++) {
                WorkTask a = tasks.get(i);
                WorkTask b = tasks.get(j);
                if (starts.get(i) < starts.get(j) + b.steps()) {
                    before(a, b, out);
                }
                if (i != j) {
                    LocalDateTime end = clock.end(starts.get(i) + a.steps());
                    apart(
                            a,
                            b,
                            Duration.between(end, clock.begin(starts.get(j))).toMinutes(),
                            out);
                }
            }
        }
        return List.copyOf(out);
    }

    /** A task that begins before another is done. */
    private static void before(WorkTask a, WorkTask b, List<String> out) {
        boolean cut = b.stage() == WorkStage.CUT;
        if (isPaint(a) && cut && !Collections.disjoint(a.parts(), b.parts())) {
            say(WorkRule.CUT_BEFORE_OWN_PAINT, a, b, out);
        }
        boolean fit = b.stage() == WorkStage.SECOND_DRY_FIT || b.stage() == WorkStage.DRY_FIT;
        if (isPaint(a) && fit && !a.loose()) {
            say(WorkRule.DRY_FIT_BEFORE_PAINT, a, b, out);
        }
        if (a.id().equals("assemble") && cut && !b.loose()) {
            say(WorkRule.NO_CUT_WITH_ELECTRONICS, a, b, out);
        }
        if (a.stage() == WorkStage.SECOND_DRY_FIT && cut && !b.loose()) {
            say(WorkRule.SECOND_FIT_AFTER_CUTS, a, b, out);
        }
    }

    /** A task that begins some minutes after another's end, below 0: before it. */
    private void apart(WorkTask a, WorkTask b, long minutes, List<String> out) {
        boolean samePaint = a.parts().equals(b.parts()) && a.loose() == b.loose();
        if (a.stage() == WorkStage.TEST_PIECE
                && b.stage() == WorkStage.PREP
                && a.loose() == b.loose()
                && minutes < a.taken().restMin()) {
            say(WorkRule.TEST_PIECE_BEFORE_PAINT, b, a, out);
        }
        if (a.stage() == WorkStage.CURE
                && b.id().equals("assemble")
                && !a.loose()
                && minutes < a.taken().restMin()) {
            say(WorkRule.PAINT_HARD_BEFORE_ASSEMBLY, b, a, out);
        }
        boolean next = (a.stage() == WorkStage.PRIME && b.stage() == WorkStage.COLOUR)
                || (a.stage() == WorkStage.COLOUR && b.stage() == WorkStage.CLEAR);
        boolean over = next && !b.taken().coats().isEmpty();
        boolean unsanded = !a.taken().coats().isEmpty()
                && !a.taken().coats().get(a.taken().coats().size() - 1).last();
        boolean locked = minutes < 0
                || (minutes > cure.recoatWithinH() * MIN_PER_H && minutes < cure.recoatAfterH() * MIN_PER_H);
        if (samePaint && over && unsanded && locked) {
            say(WorkRule.COATS_AT_ONCE, b, a, out);
        }
    }

    private static void say(WorkRule rule, WorkTask first, WorkTask then, List<String> out) {
        out.add(rule + ": " + first.id() + " against " + then.id());
    }

    private static boolean isPaint(WorkTask task) {
        return switch (task.stage()) {
            case PREP, PRIME, COLOUR, CLEAR -> true;
            default -> false;
        };
    }
}

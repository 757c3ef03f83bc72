package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loopwright.catalog.standard.WorkStage;

/**
 * Looks at a finished schedule and says which rules of the trade it breaks. It knows the tasks, and nothing of what the planner
 * put before what.
 */
final class RuleCheck {

    private RuleCheck() {}

    /** What is broken, as sentences; none: nothing. */
    static List<String> broken(List<WorkTask> tasks, List<Integer> starts) {
        List<String> out = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            for (int j = 0; j < tasks.size(); j++) {
                WorkTask a = tasks.get(i);
                WorkTask b = tasks.get(j);
                boolean early = starts.get(i) < starts.get(j) + b.steps();
                if (early && isPaint(a) && b.stage() == WorkStage.CUT && !Collections.disjoint(a.parts(), b.parts())) {
                    out.add(WorkRule.CUT_BEFORE_OWN_PAINT + ": " + a.id() + " before " + b.id());
                }
                boolean fit = b.stage() == WorkStage.SECOND_DRY_FIT || (b.stage() == WorkStage.DRY_FIT);
                if (early && isPaint(a) && fit && !a.loose()) {
                    out.add(WorkRule.DRY_FIT_BEFORE_PAINT + ": " + a.id() + " before " + b.id());
                }
                if (early && a.id().equals("assemble") && b.stage() == WorkStage.CUT && !b.loose()) {
                    out.add(WorkRule.NO_CUT_WITH_ELECTRONICS + ": " + a.id() + " before " + b.id());
                }
                if (early && a.stage() == WorkStage.SECOND_DRY_FIT && b.stage() == WorkStage.CUT && !b.loose()) {
                    out.add(WorkRule.SECOND_FIT_AFTER_CUTS + ": " + a.id() + " before " + b.id());
                }
            }
        }
        return List.copyOf(out);
    }

    private static boolean isPaint(WorkTask task) {
        return switch (task.stage()) {
            case PREP, PRIME, COLOUR, CLEAR -> true;
            default -> false;
        };
    }
}

package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.Port;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** The fill cap is at or above the highest point of the loop. */
final class CapIsHighest implements LoopRule {

    @Override
    public String id() {
        return "plumbing.cap-is-highest";
    }

    @Override
    public String statement() {
        return "the fill cap is at or above the highest point of the loop";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        Port cap = plan.openings().fill();
        Heights.Point highest = Heights.highest(plan);
        int below = highest.zHmm() - cap.at().z();
        return List.of(
                below <= 0
                        ? new Finding(
                                id(),
                                Section.FILL,
                                Verdict.OK,
                                "The cap is " + Heights.mm(cap.at().z()) + " up, the loop's highest point, "
                                        + highest.what() + ", " + Heights.mm(highest.zHmm()) + ".")
                        : new Finding(
                                id(),
                                Section.FILL,
                                Verdict.WARN,
                                "The cap is " + Heights.mm(below) + " below the loop's highest point, " + highest.what()
                                        + ": needs tilt or a top plug to bleed."));
    }
}

package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.Port;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;
import loopwright.quantity.Hundredths;

/** A bottle goes under the drain. */
final class DrainHasRoom implements LoopRule {

    @Override
    public String id() {
        return "plumbing.drain-has-room";
    }

    @Override
    public String statement() {
        return "30 to 40 mm are free in front of the drain and 60 below it";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        if (plan.openings().drain().isEmpty()) {
            return List.of();
        }
        Port drain = plan.openings().drain().get();
        Reach front = Reach.from(plan, drain);
        int below = drain.at().z();
        String where = "At the drain " + Heights.mm(front.freeHmm()) + " are free in front, up to " + front.until()
                + ", and " + Heights.mm(below) + " down to the floor";
        boolean kept = front.freeHmm() >= Hundredths.ofMm(practice.drain().frontMm())
                && below >= Hundredths.ofMm(practice.drain().belowMm());
        return List.of(
                kept
                        ? new Finding(id(), Section.DRAIN, Verdict.OK, where + ".")
                        : new Finding(
                                id(),
                                Section.DRAIN,
                                Verdict.WARN,
                                where + "; " + practice.drain().frontMm() + " and "
                                        + practice.drain().belowMm()
                                        + " are wanted: a hose on the drain, and the chassis raised."));
    }
}

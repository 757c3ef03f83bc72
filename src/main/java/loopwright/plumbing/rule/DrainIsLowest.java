package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.Port;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;
import loopwright.quantity.Hundredths;

/** A drain sits at the lowest point. */
final class DrainIsLowest implements LoopRule {

    @Override
    public String id() {
        return "plumbing.drain-is-lowest";
    }

    @Override
    public String statement() {
        return "a drain is at the lowest point of the loop";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        Heights.Point lowest = Heights.lowest(plan);
        if (plan.openings().drain().isEmpty()) {
            return List.of(new Finding(
                    id(),
                    Section.DRAIN,
                    Verdict.WARN,
                    "No port is free for a drain: put a tee with a drain into the run nearest the lowest point, "
                            + lowest.what() + ", " + Heights.mm(lowest.zHmm()) + " up."));
        }
        Port drain = plan.openings().drain().get();
        int over = drain.at().z() - lowest.zHmm();
        String where = "Drain at " + drain.name() + ", " + Heights.mm(drain.at().z()) + " up, " + Heights.mm(over)
                + " over the lowest point, " + lowest.what();
        boolean low = over <= Hundredths.ofMm(practice.drain().portReachMm());
        return List.of(
                low
                        ? new Finding(id(), Section.DRAIN, Verdict.OK, where + ".")
                        : new Finding(
                                id(),
                                Section.DRAIN,
                                Verdict.WARN,
                                where + ": what lies lower stays; a tee with a drain at the lowest run takes it."));
    }
}

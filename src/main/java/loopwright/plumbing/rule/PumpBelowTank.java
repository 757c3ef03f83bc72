package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** The pump's inlet fills by gravity. */
final class PumpBelowTank implements LoopRule {

    @Override
    public String id() {
        return "plumbing.pump-below-tank";
    }

    @Override
    public String statement() {
        return "the pump's inlet is no higher than the reservoir's outlet, and than its bottom";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        PlannedRun feed = plan.runs().get(0);
        if (plan.tank().kind() == LoopPart.Kind.PUMP_RESERVOIR) {
            return List.of(new Finding(id(), Section.FILL, Verdict.OK, "The pump is in the reservoir's own body."));
        }
        int outlet = feed.from().at().z();
        int bottom = plan.tank().low().z();
        int inlet = feed.to().at().z();
        String where = "The pump's inlet is " + Heights.mm(inlet) + " up, the reservoir's outlet " + Heights.mm(outlet)
                + ", its bottom " + Heights.mm(bottom);
        if (inlet > outlet) {
            return List.of(new Finding(
                    id(), Section.FILL, Verdict.BROKEN, where + ": the pump would run dry; it has to stand lower."));
        }
        return List.of(
                inlet > bottom
                        ? new Finding(
                                id(),
                                Section.FILL,
                                Verdict.WARN,
                                where + ": the pump draws air while the reservoir is nearly empty; keep it topped up.")
                        : new Finding(id(), Section.FILL, Verdict.OK, where + ": it fills by gravity."));
    }
}

package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** Tube reaches from port to port. */
final class RunsHaveAWay implements LoopRule {

    @Override
    public String id() {
        return "plumbing.runs-have-a-way";
    }

    @Override
    public String statement() {
        return "every run has a way from port to port";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        return plan.runs().stream()
                .filter(r -> r.route().isEmpty())
                .map(r -> new Finding(
                        id(),
                        Section.RUNS,
                        Verdict.BROKEN,
                        "No way for tube from " + r.from().name() + " to " + r.to().name() + ": blocked by "
                                + String.join(" and ", r.blockedBy()) + "."))
                .toList();
    }
}

package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;
import loopwright.quantity.Hundredths;

/** Coolant below all ports of a part stays in it. */
final class PocketsDrain implements LoopRule {

    @Override
    public String id() {
        return "plumbing.pockets-drain";
    }

    @Override
    public String statement() {
        return "each low pocket of the loop has a drain, or is tilted out";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        return plan.parts().stream()
                .filter(p -> p.kind() != LoopPart.Kind.BLOCK)
                .filter(p -> under(p) > Hundredths.ofMm(practice.drain().portReachMm()))
                .map(p -> new Finding(
                        id(),
                        Section.DRAIN,
                        Verdict.WARN,
                        p.name() + " reaches " + Heights.mm(under(p))
                                + " below its lowest port and cannot drain: tilt it out."))
                .toList();
    }

    private static int under(LoopPart part) {
        return Heights.lowestPort(part) - part.low().z();
    }
}

package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;
import loopwright.quantity.Hundredths;

/** Air at the top of a radiator finds a port. */
final class AirFindsAPort implements LoopRule {

    @Override
    public String id() {
        return "plumbing.air-finds-a-port";
    }

    @Override
    public String statement() {
        return "the highest end of a radiator has a port or a plug";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        return plan.parts().stream()
                .filter(p -> p.kind() == LoopPart.Kind.RADIATOR)
                .map(p -> finding(p, practice))
                .toList();
    }

    private Finding finding(LoopPart part, PlumbingPractice practice) {
        int over = part.high().z() - Heights.highestPort(part);
        boolean traps = over > Hundredths.ofMm(practice.drain().portReachMm());
        String where = part.name() + ": its top is " + Heights.mm(over) + " over its highest port";
        return traps
                ? new Finding(id(), Section.BLEED, Verdict.WARN, where + ", air stays there: tilt it while it bleeds.")
                : new Finding(id(), Section.BLEED, Verdict.OK, where + ": air finds a port.");
    }
}

package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** Air is left in the tank for expansion and bleeding. */
final class TankKeepsAir implements LoopRule {

    @Override
    public String id() {
        return "plumbing.tank-keeps-air";
    }

    @Override
    public String statement() {
        return "10 to 15 % of the tank stays air";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        double tankML = plan.tank().holds().coolantML();
        int from = practice.tank().airMinPercent();
        int to = practice.tank().airMaxPercent();
        return List.of(new Finding(
                id(),
                Section.FILL,
                Verdict.OK,
                "Leave " + Math.round(tankML * from / PERCENT) + " to " + Math.round(tankML * to / PERCENT)
                        + " mL of air in the tank's " + Math.round(tankML) + " mL (" + from + " to " + to + " %)."));
    }

    private static final double PERCENT = 100;
}

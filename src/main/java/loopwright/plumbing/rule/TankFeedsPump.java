package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** The tank is directly before the pump. */
final class TankFeedsPump implements LoopRule {

    @Override
    public String id() {
        return "plumbing.tank-feeds-pump";
    }

    @Override
    public String statement() {
        return "the reservoir comes directly before the pump";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        LoopPart tank = plan.tank();
        boolean one = tank.kind() == LoopPart.Kind.PUMP_RESERVOIR;
        boolean kept = one || plan.parts().get(1).kind() == LoopPart.Kind.PUMP;
        String sentence = one
                ? "Pump and reservoir are one body."
                : "Behind the reservoir comes the " + plan.parts().get(1).name() + ".";
        return List.of(new Finding(id(), Section.RUNS, kept ? Verdict.OK : Verdict.BROKEN, sentence));
    }
}

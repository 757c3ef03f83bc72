package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** A full tank hangs on two points and not too heavy. */
final class TankIsHeld implements LoopRule {

    @Override
    public String id() {
        return "plumbing.tank-is-held";
    }

    @Override
    public String statement() {
        return "a full reservoir is held at two points, with rubber";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        LoopPart tank = plan.tank();
        if (tank.holds().massG().isEmpty()) {
            return List.of(new Finding(
                    id(), Section.FILL, Verdict.UNKNOWN, "The tank's mass is not given: hold it at two points."));
        }
        long full = tank.holds().massG().get() + Math.round(tank.holds().coolantML());
        int most = practice.tank().massMaxG();
        return List.of(
                full <= most
                        ? new Finding(
                                id(),
                                Section.FILL,
                                Verdict.OK,
                                "The full tank weighs about " + full + " g: two points, with rubber.")
                        : new Finding(
                                id(),
                                Section.FILL,
                                Verdict.WARN,
                                "The full tank weighs about " + full + " g, over " + most
                                        + ": two points are not enough; never on a door."));
    }
}

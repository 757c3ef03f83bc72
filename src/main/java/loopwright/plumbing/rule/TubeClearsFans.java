package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Where;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** Tube stays out of the air in front of fans; measured again from the run's own points. */
final class TubeClearsFans implements LoopRule {

    @Override
    public String id() {
        return "plumbing.tube-clear-of-fans";
    }

    @Override
    public String statement() {
        return "no tube within 10 mm of a fan blade";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        int radius = plan.materials().shape().radius();
        List<String> near = plan.runs().stream()
                .filter(r -> r.route().isPresent())
                .filter(r -> plan.materials().space().fanAir().stream().anyMatch(fan -> enters(r, fan, radius)))
                .map(r -> r.name())
                .toList();
        String least = practice.tube().fromFanMm() + " mm";
        return List.of(
                near.isEmpty()
                        ? new Finding(
                                id(), Section.RUNS, Verdict.OK, "No tube is within " + least + " of a fan's open face.")
                        : new Finding(
                                id(),
                                Section.RUNS,
                                Verdict.BROKEN,
                                "Within " + least + " of a fan's open face: " + String.join(", ", near) + "."));
    }

    private static boolean enters(PlannedRun run, Solid fan, int radius) {
        List<Where> points = run.route().orElseThrow().points();
        for (int i = 1; i < points.size(); i++) {
            Where a = points.get(i - 1);
            Where b = points.get(i);
            if (Solid.sleeve("", a, b, radius).meets(fan)) {
                return true;
            }
        }
        return false;
    }
}

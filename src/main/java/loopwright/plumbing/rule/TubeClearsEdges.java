package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.plumbing.rule.Finding.Verdict;

/** Tube stays away from cut edges, which no file locates. */
final class TubeClearsEdges implements LoopRule {

    @Override
    public String id() {
        return "plumbing.tube-clear-of-edges";
    }

    @Override
    public String statement() {
        return "no tube within 5 mm of a sharp cut edge, or the edge gets a grommet";
    }

    @Override
    public List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        return List.of(new Finding(
                id(),
                Section.RUNS,
                Verdict.UNKNOWN,
                "Where cut edges run is not known here: keep tube 5 mm off them, or edge them."));
    }
}

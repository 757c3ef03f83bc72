package loopwright.plumbing.rule;

import java.util.List;
import loopwright.catalog.standard.PlumbingPractice;
import loopwright.plumbing.LoopPlan;

/** All rules on loops. */
public final class LoopRules {

    private static final List<LoopRule> ALL = List.of(
            new RunsHaveAWay(),
            new TankFeedsPump(),
            new MarkedPortsKept(),
            new TubeClearsFans(),
            new TubeClearsEdges(),
            new PumpBelowTank(),
            new CapIsHighest(),
            new CapHasRoom(),
            new TankKeepsAir(),
            new TankIsHeld(),
            new AirFindsAPort(),
            new DrainIsLowest(),
            new DrainHasRoom(),
            new PocketsDrain());

    private LoopRules() {}

    /** What all say of a plan, in their order. */
    public static List<Finding> of(LoopPlan plan, PlumbingPractice practice) {
        return ALL.stream().flatMap(r -> r.of(plan, practice).stream()).toList();
    }

    /** Ids and statements, for documents. */
    public static List<String> statements() {
        return ALL.stream().map(r -> r.id() + ": " + r.statement()).toList();
    }
}

package loopwright.plumbing;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Tube;
import loopwright.plumbing.route.Space;
import loopwright.plumbing.route.TubeShape;
import loopwright.plumbing.rule.Finding;

/**
 * A planned loop.
 *
 * @param parts in loop order, the tank first
 * @param runs from the tank on, the last one back to it
 * @param notes what was assumed or left out
 */
public record LoopPlan(
        List<LoopPart> parts,
        List<PlannedRun> runs,
        Openings openings,
        Materials materials,
        List<Finding> findings,
        List<String> notes) {

    /** Copies. */
    public LoopPlan {
        parts = List.copyOf(parts);
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
    }

    /**
     * Where coolant goes in and out.
     *
     * @param free ports that no run uses
     * @param drain the lowest of them
     */
    public record Openings(Port fill, List<Port> free, Optional<Port> drain) {
        /** Copies. */
        public Openings {
            free = List.copyOf(free);
        }
    }

    /**
     * What it takes.
     *
     * @param space what runs had to go round: parts and plugs, without runs and fittings
     */
    public record Materials(Tube tube, TubeShape shape, FittingBill bill, CoolantOrder coolant, Space space) {}

    /** The tank. */
    public LoopPart tank() {
        return parts.get(0);
    }

    /** All tube, hundredths of a millimetre. */
    public long tubeHmm() {
        return runs.stream().mapToLong(PlannedRun::lengthHmm).sum();
    }

    /** Elbows of all runs. */
    public int elbows() {
        return runs.stream().mapToInt(PlannedRun::elbows).sum();
    }

    /** Bends of all runs. */
    public int bends() {
        return runs.stream().mapToInt(PlannedRun::bends).sum();
    }

    /** Whether every run has a way. */
    public boolean isReachable() {
        return runs.stream().allMatch(r -> r.route().isPresent());
    }
}

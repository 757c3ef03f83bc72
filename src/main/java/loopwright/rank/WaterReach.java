package loopwright.rank;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.part.Radiator;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;

/** Upper bounds of what the coolant's side of a radiator conducts, over every loop a brief allows. */
final class WaterReach {

    private final MachineModel model;
    private final double warmC;
    private final List<Machine.Water> loops;
    private final Map<String, Double> sides = new HashMap<>();

    /**
     * Bounds over some loops.
     *
     * @param warmC warmest mean temperature that the coolant may have; thinner and better conducting coolant is warmer
     */
    WaterReach(MachineModel model, List<Machine.Water> loops, double warmC) {
        this.model = model;
        this.loops = List.copyOf(loops);
        this.warmC = warmC;
    }

    /** The coolant's side of a radiator, W/K, at most. */
    double sideWPerK(Radiator radiator) {
        return sides.computeIfAbsent(
                radiator.id(),
                id -> loops.stream()
                        .mapToDouble(w -> model.waterSideMostWPerK(w, radiator, warmC))
                        .max()
                        .orElse(0));
    }
}

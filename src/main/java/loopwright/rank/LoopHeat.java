package loopwright.rank;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Block;
import loopwright.fit.FitCase;
import loopwright.fit.PartSet;
import loopwright.loop.Machine;

/**
 * Heat of a choice of parts, and the loop they make.
 *
 * @param water the loop
 * @param coolantW into the coolant, the pump's included
 * @param caseW into the case's air
 */
public record LoopHeat(Machine.Water water, double coolantW, double caseW) {

    /** That of the choice that heats the coolant least, of all that go together; empty when none does. */
    public static Optional<LoopHeat> least(FitCase fitCase) {
        CoreHeat heat = new CoreHeat(fitCase);
        return PartSet.all(fitCase).stream()
                .flatMap(s -> s.choices().stream())
                .map(heat::of)
                .min(Comparator.comparingDouble(LoopHeat::coolantW));
    }

    /** Whether coolant flows the same way through the same things; heats may differ. */
    boolean flowsLike(LoopHeat other) {
        return water.pump().equals(other.water.pump()) && flows(water).equals(flows(other.water));
    }

    private static List<Block.Flow> flows(Machine.Water water) {
        return water.blocks().stream().map(Machine.BlockAt::flow).toList();
    }

    /** Whether no part gives off more, into coolant or air; asked of loops that flow alike. */
    boolean isAtMost(LoopHeat other) {
        for (int i = 0; i < water.blocks().size(); i++) {
            if (water.blocks().get(i).heatW() > other.water.blocks().get(i).heatW()) {
                return false;
            }
        }
        return caseW <= other.caseW;
    }
}

package loopwright.rank;

import java.util.Arrays;
import java.util.List;
import loopwright.catalog.part.Radiator.Metal;
import loopwright.fit.Layout.Stack;
import loopwright.fit.Shapes;
import loopwright.loop.material.WettedMetals;

/** Whether stacks can be had with real parts, and the other parts with them, in one metal. */
final class MetalChoice {

    private final Shapes shapes;
    private final List<Core> cores;

    MetalChoice(Shapes shapes, List<Core> cores) {
        this.shapes = shapes;
        this.cores = cores;
    }

    /** Whether any choice of parts keeps aluminium and copper out of one loop. */
    boolean isPossible(List<Stack> stacks) {
        return Arrays.stream(Metal.values())
                .anyMatch(metal -> cores.stream().anyMatch(c -> isOnly(c.metals(), metal))
                        && stacks.stream().allMatch(s -> has(s, metal)));
    }

    private static boolean isOnly(WettedMetals metals, Metal metal) {
        return !metals.and(WettedMetals.of(metal)).mixes();
    }

    private boolean has(Stack stack, Metal metal) {
        return !stack.shape().arrangement().hasRadiator()
                || shapes.radiatorsOf(stack.shape()).stream()
                        .anyMatch(r -> r.ports().metal() == metal);
    }
}

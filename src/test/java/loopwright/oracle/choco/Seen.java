package loopwright.oracle.choco;

import java.util.Arrays;
import java.util.Set;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/** Fails where the first variables, all fixed, have been seen before: one solution each is enough. */
final class Seen extends Propagator<IntVar> {
    private final int heads;
    private final Set<String> seen;

    Seen(IntVar[] all, int heads, Set<String> seen) {
        super(all, PropagatorPriority.VERY_SLOW, false);
        this.heads = heads;
        this.seen = seen;
    }

    static String key(IntVar[] all, int heads) {
        int[] values = new int[heads];
        for (int i = 0; i < heads; i++) {
            values[i] = all[i].getValue();
        }
        return Arrays.toString(values);
    }

    @Override
    public void propagate(int mask) throws ContradictionException {
        for (int i = 0; i < heads; i++) {
            if (!vars[i].isInstantiated()) {
                return;
            }
        }
        if (seen.contains(key(vars, heads))) {
            fails();
        }
    }

    @Override
    public ESat isEntailed() {
        return ESat.TRUE;
    }
}

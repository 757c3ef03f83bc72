package loopwright.workshop.schedule;

import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/** A job that no night may break starts early enough in its day. */
final class WholeDay extends Propagator<IntVar> {

    private final transient Job job;
    private final transient Clock clock;

    WholeDay(IntVar start, Job job, Clock clock) {
        super(new IntVar[] {start}, PropagatorPriority.UNARY, false);
        this.job = job;
        this.clock = clock;
    }

    @Override
    public void propagate(int eventMask) throws ContradictionException {
        vars[0].updateLowerBound(clock.fit(vars[0].getLB(), job), this);
        vars[0].updateUpperBound(clock.fitBack(vars[0].getUB(), job), this);
    }

    @Override
    public ESat isEntailed() {
        boolean stands = clock.fit(vars[0].getLB(), job) == vars[0].getLB();
        return vars[0].isInstantiated() ? ESat.eval(stands) : ESat.UNDEFINED;
    }
}

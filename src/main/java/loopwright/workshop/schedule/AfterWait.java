package loopwright.workshop.schedule;

import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.util.ESat;

/** One job starts no sooner than a wait after another's end: bounds of both starts, steps. */
final class AfterWait extends Propagator<IntVar> {

    private final transient Wait wait;

    /** A wait in minutes after a job of so many steps. */
    record Wait(int steps, int waitMin, Clock clock) {
        int after(int start) {
            return clock.after(start + steps, waitMin);
        }

        int before(int start) {
            return start < 0 ? -1 : clock.before(start, waitMin) - steps;
        }
    }

    AfterWait(IntVar first, IntVar then, Wait wait) {
        super(new IntVar[] {first, then}, PropagatorPriority.BINARY, false);
        this.wait = wait;
    }

    @Override
    public void propagate(int eventMask) throws ContradictionException {
        vars[1].updateLowerBound(wait.after(vars[0].getLB()), this);
        vars[0].updateUpperBound(wait.before(vars[1].getUB()), this);
    }

    @Override
    public ESat isEntailed() {
        if (vars[1].getUB() < wait.after(vars[0].getLB())) {
            return ESat.FALSE;
        }
        return vars[1].getLB() >= wait.after(vars[0].getUB()) ? ESat.TRUE : ESat.UNDEFINED;
    }
}

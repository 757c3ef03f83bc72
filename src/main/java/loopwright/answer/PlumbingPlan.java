package loopwright.answer;

import java.util.Optional;
import loopwright.loop.Machine;
import loopwright.loop.Steady;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.Planner;
import loopwright.quantity.Units;

/**
 * The planned loop of a build, and what its metres and fittings do to flow and temperature.
 *
 * @param reckoned the state with the tube and the elbows that a build is ranked with
 * @param planned the state with those of the plan, parts in its order; absent where it finds no steady state
 */
public record PlumbingPlan(LoopPlan plan, Steady reckoned, Optional<Steady> planned) {

    /** Plans the loop of a build. */
    public static PlumbingPlan of(Inspection in) {
        LoopPlan plan = new Planner(in.fitCase()).plan(in.witness(), in.build().chosen(), in.machine());
        Optional<Steady> planned =
                in.model().solve(withRuns(in.machine(), plan)).found();
        return new PlumbingPlan(plan, in.state(), planned);
    }

    /** The machine with the runs of a plan. */
    private static Machine withRuns(Machine machine, LoopPlan plan) {
        Machine.Water was = machine.water();
        Machine.Turns turns = new Machine.Turns(
                2 * plan.runs().size(),
                plan.elbows(),
                plan.bends(),
                plan.parts().stream().map(LoopPart::name).toList());
        Machine.Runs runs = new Machine.Runs(was.runs().tube(), plan.tubeHmm() * Units.M_PER_HMM, Optional.of(turns));
        return new Machine(
                machine.site(),
                machine.mounts(),
                machine.openings(),
                new Machine.Water(was.pump(), was.coolant(), runs, was.blocks(), was.order()),
                machine.caseHeatW());
    }
}

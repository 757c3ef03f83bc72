package loopwright.rank;

import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.air.AirDirection;

/** Stacks with the best parts of their shape at the speed the trade sizes at: 1300 rpm, or a slower fan's full speed. */
public final class RatedStacks {

    /** "So many watts a section at 10 K, at 1300 rpm"; common practice, no source. */
    private static final double RATED_SPEED_RPM = 1300;

    /** Full duty, percent. */
    private static final double FULL_PERCENT = 100;

    private final FitCase fitCase;
    private final MachineModel model;
    private final StackAir air;

    /** Rated stacks of a case. */
    public RatedStacks(FitCase fitCase, MachineModel model) {
        this.fitCase = fitCase;
        this.model = model;
        this.air = new StackAir(fitCase);
    }

    /** What the best parts conduct, alone and breathing the room, W/K: coolant mean to incoming air. */
    public double conductanceWPerK(Stack stack, ModSet mods) {
        return best(stack, mods).map(model::ratedConductanceWPerK).orElse(0.0);
    }

    /** The best parts, drawing in; empty when a shape has none. */
    public Optional<Machine.FanMount> best(Stack stack, ModSet mods) {
        Machine.MountAir meets = air.at(
                stack.frame().mount(),
                stack.shape().pattern(),
                stack.shape().fanThickness().valueHmm(),
                mods);
        Optional<Machine.FanMount> best = Optional.empty();
        double most = -1;
        for (Radiator radiator : fitCase.shapes().radiatorsOf(stack.shape())) {
            for (Fan fan : fitCase.shapes().fansOf(stack.shape())) {
                double percent = Math.min(
                        FULL_PERCENT, FULL_PERCENT * RATED_SPEED_RPM / fan.air().speedMaxRpm());
                Machine.FanMount mount = new Machine.FanMount(
                        stack.frame().mount().id(),
                        AirDirection.IN,
                        new Machine.Fans(
                                fan,
                                stack.shape().pattern().fans(),
                                stack.shape().arrangement().fanLayers(),
                                new Duty(percent)),
                        meets,
                        Optional.of(air.radiator(stack.frame().mount(), radiator)));
                double conductance = model.ratedConductanceWPerK(mount);
                if (conductance > most) {
                    most = conductance;
                    best = Optional.of(mount);
                }
            }
        }
        return best;
    }
}

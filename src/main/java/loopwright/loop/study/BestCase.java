package loopwright.loop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.BriefLimits.HeatLimits;
import loopwright.loop.Duty;
import loopwright.loop.Junctions;
import loopwright.loop.Machine;
import loopwright.loop.Nudge;
import loopwright.loop.Steady;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirResistance;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;

/**
 * Whether any duties in a box may hold limits: the full model with everything at its best at once.
 *
 * <p>A mount moves the most air with its own fans at their fastest, those that blow the same way at their slowest and the others
 * at their fastest, as that is how the pressure inside goes. Each core gets that air, the case all air that could come in, the
 * loop the head of the fastest pump and the heat of the slowest. More air through a core that cools, more air through the case
 * each leave the coolant's mean no warmer. More coolant mostly does, but where the air is nearly as warm as the coolant when it
 * leaves, it lifts the mean; so both ends of the pump count.
 *
 * <p>Where case air is warmer than the coolant, a radiator that breathes it warms the coolant, the more the more air it gets: then
 * those radiators get none.
 *
 * <p><b>Accuracy.</b> That the mean is least at an end of the pump's duties is no theorem; {@link #SLACK_K} is for what bends in between,
 * and SpeedsTest tries boxes by the hundred.
 */
final class BestCase {

    /** What the best state may be too warm by, K. */
    static final double SLACK_K = 0.02;

    private final Motors motors;
    private final SpeedLimits limits;

    BestCase(Motors motors, SpeedLimits limits) {
        this.motors = motors;
        this.limits = limits;
    }

    /** Whether some duties in the box may hold the limits; no is certain. */
    boolean mayHold(DutyBox box) {
        CaseFlow air = air(box);
        Machine fast = motors.machine(box.high());
        Machine.PumpAt slow = new Machine.PumpAt(
                fast.water().pump().pump(), new Duty(box.low().pumpPercent()));
        Machine best = Changed.pump(fast, Changed.heatOf(fast.water().pump(), slow.duty()));
        Optional<Steady> most = solve(best, air);
        boolean warms = most.isPresent() && warmsCoolant(most.get());
        if (warms) {
            air = stilled(air);
            most = solve(best, air);
        }
        if (most.isEmpty()) { // nothing cools, or nothing would that blows in
            return warms;
        }
        boolean partsCount = limits.parts().processorMaxC().isPresent()
                || limits.parts().cardMaxC().isPresent();
        Machine dull = Changed.pump(fast, slow);
        boolean needsLeast = partsCount || !isCool(most.get());
        Optional<Steady> least = needsLeast && box.width(motors.pump()) > 0 ? solve(dull, air) : most;
        if (least.isEmpty()) {
            return true;
        }
        return (isCool(most.get()) || isCool(least.get()))
                && partsMayHold(best, most.get(), least.get())
                && (limits.parts().caseMaxC().isEmpty()
                        || isCoolInside(best, leanIn(box, air))
                        || isCoolInside(dull, leanIn(box, air)));
    }

    /** The same with the least air through radiators that blow in: then they bring the least heat into the case. */
    private CaseFlow leanIn(DutyBox box, CaseFlow air) {
        List<Double> flows = new ArrayList<>();
        double in = 0;
        for (int i = 0; i < motors.pump(); i++) {
            boolean blowsIn = motors.direction(i) == AirDirection.IN;
            Duties hindered =
                    towards(box, motors.direction(i)).with(i, box.low().at(i));
            double core = blowsIn ? motors.air(hindered).coreFlowM3PerS(i) : air.coreFlowM3PerS(i);
            in += blowsIn ? motors.branch(i, box.high().at(i)).wholeM3PerS(core) : 0;
            flows.add(core);
        }
        return opened(box, air.inM3PerS() - in, flows);
    }

    /** Air at the fastest fans' mounts, with so much coming in besides. */
    private CaseFlow opened(DutyBox box, double besideM3PerS, List<Double> coreFlows) {
        List<AirResistance> ways = besideM3PerS > 0 ? List.of(new AirResistance(1 / besideM3PerS, 0)) : List.of();
        return new CaseFlow(new CaseAir(motors.branches(box.high()), ways), -1, coreFlows);
    }

    /** Whether the air inside may be cool enough; so too if that cannot be told. */
    private boolean isCoolInside(Machine machine, CaseFlow air) {
        double limitC = limits.parts().caseMaxC().orElseThrow();
        return solve(machine, air).map(s -> s.caseC() - SLACK_K <= limitC).orElse(true);
    }

    private boolean isCool(Steady state) {
        return state.water().meanC() - SLACK_K <= limits.coolantMaxC();
    }

    /** The same with no air through the radiators that breathe the case. */
    private CaseFlow stilled(CaseFlow air) {
        List<Double> flows = new ArrayList<>();
        for (int i = 0; i < motors.pump(); i++) {
            flows.add(motors.direction(i) == AirDirection.IN ? air.coreFlowM3PerS(i) : 0);
        }
        return new CaseFlow(air.air(), air.insidePa(), flows);
    }

    private Optional<Steady> solve(Machine machine, CaseFlow air) {
        return motors.model().solve(machine, air, Nudge.NONE).found();
    }

    private static boolean warmsCoolant(Steady state) {
        for (Steady.RadiatorState radiator : state.radiators()) {
            if (radiator.heatW() < 0) {
                return true;
            }
        }
        return false;
    }

    /** All air at its best; its opening stands for all air that is not blown in. */
    CaseFlow air(DutyBox box) {
        List<Double> coreFlows = new ArrayList<>();
        double in = 0;
        double out = 0;
        for (int i = 0; i < motors.pump(); i++) {
            Duties helped = towards(box, against(motors.direction(i)))
                    .with(i, box.high().at(i));
            double core = motors.air(helped).coreFlowM3PerS(i);
            double whole = motors.branch(i, box.high().at(i)).wholeM3PerS(core);
            coreFlows.add(core);
            in += motors.direction(i) == AirDirection.IN ? whole : 0;
            out += motors.direction(i) == AirDirection.IN ? 0 : whole;
        }
        CaseFlow sucked = motors.air(towards(box, AirDirection.OUT));
        double opened = Math.max(sucked.inM3PerS() - sucked.fanInM3PerS(), out - in);
        return opened(box, opened, coreFlows);
    }

    private static AirDirection against(AirDirection direction) {
        return direction == AirDirection.IN ? AirDirection.OUT : AirDirection.IN;
    }

    /** Fans that blow this way at their fastest, the others at their slowest. */
    private Duties towards(DutyBox box, AirDirection direction) {
        Duties out = box.low();
        for (int i = 0; i < motors.pump(); i++) {
            out = motors.direction(i) == direction ? out.with(i, box.high().at(i)) : out;
        }
        return out;
    }

    /**
     * A part's place in the loop is over or under the mean by heat over flow; that is least with the most or with the least
     * coolant, as is the mean.
     */
    private boolean partsMayHold(Machine best, Steady most, Steady least) {
        HeatLimits parts = limits.parts();
        List<Junctions.Junction> fast = Junctions.of(best, most, limits.practice());
        List<Junctions.Junction> slow = Junctions.of(best, least, limits.practice());
        double meanC = Math.min(most.water().meanC(), least.water().meanC());
        for (int i = 0; i < fast.size(); i++) {
            double over = Math.min(overMeanK(fast.get(i), most), overMeanK(slow.get(i), least));
            double step = Math.min(fast.get(i).stepK(), slow.get(i).stepK());
            Optional<Double> limit =
                    fast.get(i).name().equals(Machine.PROCESSOR) ? parts.processorMaxC() : parts.cardMaxC();
            if (limit.isPresent() && meanC + over + step - SLACK_K > limit.get()) {
                return false;
            }
        }
        return true;
    }

    private static double overMeanK(Junctions.Junction junction, Steady state) {
        return junction.temperatureC() - junction.stepK() - state.water().meanC();
    }
}

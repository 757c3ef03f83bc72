package loopwright.loop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirResistance;
import loopwright.loop.air.CaseAir;
import loopwright.loop.air.CaseFlow;
import loopwright.loop.air.Core;

/**
 * The air of a case while the fans of some mounts stand: such a mount is an opening, and the pressure that the others make
 * drives air through it, either way.
 *
 * <p><b>Units.</b> m³/s, Pa.
 *
 * <p><b>Valid for</b> fans that stand or turn freely without power. Warm air's own lift is left out: without any fan nothing
 * moves. A core's loss is taken as a linear and a quadratic part through two speeds, a few per cent off in between.
 *
 * <p><b>Source.</b> The losses of the parts in the way; the standing rotor is ASSUMED, see
 * {@code src/site/markdown/physics/assumptions.md}.
 */
final class StandingFans {

    /** Loss of a standing rotor on the dynamic pressure of its square, dimensionless. ASSUMED: half of it is hub and blades. */
    static final double ROTOR_LOSS = 4;

    /** Face speeds that a core's loss is taken at, m/s: what leaks through a standing mount is between them or near. */
    private static final double SLOW_M_PER_S = 0.2;

    private static final double BRISK_M_PER_S = 0.8;

    /** Least quadratic part, Pa·s²/m⁶: keeps paths side by side apart. */
    private static final double QUADRATIC_LEAST = 1e-6;

    private final MachineModel model;
    private final Machine machine;

    StandingFans(MachineModel model, Machine machine) {
        this.model = model;
        this.machine = machine;
    }

    /** A mount as an opening: the whole of it, and of that the radiator with the gap round it. */
    private record Opening(AirResistance whole, AirResistance core, AirResistance coreAndGap) {

        /** Air through the core, m³/s, at a gauge pressure inside. */
        double coreFlowM3PerS(double insidePa) {
            double flow = whole.flowM3PerS(Math.abs(insidePa));
            return coreAndGap.equals(AirResistance.NONE) ? flow : core.flowM3PerS(coreAndGap.lossPa(flow));
        }
    }

    /** The air while the fans of these mounts stand. */
    CaseFlow flow(Set<String> standing) {
        List<AirBranch> turning = new ArrayList<>();
        List<Opening> open = new ArrayList<>();
        List<AirResistance> vents = new ArrayList<>();
        machine.openings().forEach(v -> vents.add(model.opening(v, Nudge.NONE)));
        List<AirResistance> ways = new ArrayList<>(vents);
        for (Machine.FanMount mount : machine.mounts()) {
            if (standing.contains(mount.mount())) {
                Opening opening = opening(mount);
                open.add(opening);
                ways.add(opening.whole());
            } else {
                turning.add(model.branch(mount, Nudge.NONE));
            }
        }
        CaseFlow alone = new CaseAir(turning, ways).balance();
        AirDirection drift = alone.insidePa() > 0 ? AirDirection.OUT : AirDirection.IN;
        List<AirBranch> branches = new ArrayList<>();
        List<Double> coreFlows = new ArrayList<>();
        int turned = 0;
        int stood = 0;
        for (Machine.FanMount mount : machine.mounts()) {
            if (standing.contains(mount.mount())) {
                branches.add(model.branch(mount.blowing(drift), Nudge.NONE));
                coreFlows.add(open.get(stood++).coreFlowM3PerS(alone.insidePa()));
            } else {
                branches.add(turning.get(turned));
                coreFlows.add(alone.coreFlowM3PerS(turned++));
            }
        }
        return new CaseFlow(new CaseAir(branches, vents), alone.insidePa(), coreFlows);
    }

    private Opening opening(Machine.FanMount mount) {
        AirResistance path = model.opening(new Machine.Vent(mount.mount(), Optional.of(mount.air()), 0), Nudge.NONE);
        double areaM2 = mount.air().face().areaM2();
        double rotors = mount.fans().layers() * ROTOR_LOSS;
        AirResistance way =
                path.then(new AirResistance(0, rotors * model.air().densityKgPerM3() / (2 * areaM2 * areaM2)));
        if (mount.radiator().isEmpty()) {
            return new Opening(way, AirResistance.NONE, AirResistance.NONE);
        }
        Machine.RadiatorAt at = mount.radiator().get();
        AirResistance core =
                core(model.inAir(at.radiator()), model.core(at.radiator()).faceAreaM2() * (1 - at.maskedShare()));
        AirResistance gap = model.opening(new Machine.Vent("gap", Optional.empty(), at.gapM2()), Nudge.NONE);
        AirResistance both = core.beside(gap);
        return new Opening(way.then(both), core, both);
    }

    private static AirResistance core(Core core, double areaM2) {
        double slow = core.lossPa(SLOW_M_PER_S) / SLOW_M_PER_S;
        double brisk = core.lossPa(BRISK_M_PER_S) / BRISK_M_PER_S;
        double quadratic = (brisk - slow) / (BRISK_M_PER_S - SLOW_M_PER_S);
        double linear = slow - quadratic * SLOW_M_PER_S;
        return new AirResistance(
                Math.max(0, linear) / areaM2, Math.max(QUADRATIC_LEAST, quadratic / (areaM2 * areaM2)));
    }
}

package loopwright.rank;

import java.util.Arrays;
import loopwright.loop.CoolingBound;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.CoreFace;

/**
 * What parts on a mount move and conduct at each step of pressure that helps their fans; worked out when it is asked for.
 *
 * <p>Both ways to blow share it: what helps one way hinders the other.
 */
final class Draught {

    private final AirBranch branch;
    private final Machine.FanMount mount;
    private final MachineModel model;
    private final double waterSideWPerK;
    private final double[] flowsM3PerS = new double[PressureSteps.count()];
    private final double[] conductancesWPerK = new double[PressureSteps.count()];

    /**
     * The draught of a mount.
     *
     * @param outwards the branch blowing out, which is helped by pressure inside
     * @param waterSideWPerK upper bound of the coolant's side of its radiator
     */
    Draught(Machine.FanMount mount, AirBranch outwards, MachineModel model, double waterSideWPerK) {
        if (outwards.direction() != AirDirection.OUT) {
            throw new IllegalArgumentException("the branch must blow out: " + outwards.name());
        }
        this.mount = mount;
        this.branch = outwards;
        this.model = model;
        this.waterSideWPerK = waterSideWPerK;
        Arrays.fill(flowsM3PerS, Double.NaN);
        Arrays.fill(conductancesWPerK, Double.NaN);
    }

    /** Air through the whole mount at a step of help, m³/s. */
    double flowM3PerS(int help) {
        ask(help);
        return flowsM3PerS[help];
    }

    /** Upper bound of the radiator's conductance at a step of help, W/K; 0 without a radiator. */
    double conductanceWPerK(int help) {
        ask(help);
        return conductancesWPerK[help];
    }

    private void ask(int help) {
        if (Double.isNaN(flowsM3PerS[help])) {
            int duty = (int) Math.round(mount.fans().duty().percent());
            double core = branch.coreFlowM3PerS(PressureSteps.pascal(help, duty), 0);
            flowsM3PerS[help] = branch.wholeM3PerS(core);
            conductancesWPerK[help] = mostConductanceWPerK(core);
        }
    }

    /** Upper bound of the radiator's conductance with so much air through its core, W/K; 0 without a radiator. */
    double mostConductanceWPerK(double coreFlowM3PerS) {
        if (mount.radiator().isEmpty() || coreFlowM3PerS == 0) {
            return 0;
        }
        Machine.RadiatorAt at = mount.radiator().get();
        CoreFace face = branch.way().core().orElseThrow();
        double airSide =
                (1 - at.maskedShare()) * model.inAir(at.radiator()).airSideWPerK(coreFlowM3PerS / face.areaM2());
        double heatPerM3 = model.air().densityKgPerM3() * model.air().heatCapacityJPerKgK();
        return CoolingBound.conductanceWPerK(
                model.core(at.radiator()).conductanceUAWPerK(airSide, waterSideWPerK), coreFlowM3PerS * heatPerM3);
    }
}

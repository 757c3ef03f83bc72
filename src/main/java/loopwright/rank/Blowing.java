package loopwright.rank;

import loopwright.loop.CoolingBound;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirBranch;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.CoreFace;

/**
 * Real parts on one mount at work: which way they blow, how fast, through what; and what they can do at most.
 *
 * <p>A class, not a record: each is made once, and searches tell them apart by identity.
 */
final class Blowing {

    private final Fitting fitting;
    private final Machine.FanMount mount;
    private final MachineModel model;
    private final double waterSideWPerK;
    private final AirBranch branch;
    private final SoundPower sound;
    private final Reach alone;
    private final Reach helped;

    /**
     * What a mount can do at most at some pressure inside.
     *
     * @param airWPerK capacity rate of all its air
     * @param conductanceWPerK upper bound of its radiator's conductance; 0 without one
     */
    record Reach(double airWPerK, double conductanceWPerK) {}

    /**
     * What bounds it.
     *
     * @param helpPa the most that the pressure inside can help its fans
     * @param waterSideWPerK upper bound of the coolant's side of its radiator
     */
    record Most(double helpPa, double waterSideWPerK) {}

    Blowing(Fitting fitting, Machine.FanMount mount, Most most, SoundPower sound, MachineModel model) {
        this.fitting = fitting;
        this.mount = mount;
        this.sound = sound;
        this.model = model;
        this.waterSideWPerK = most.waterSideWPerK();
        this.branch = model.branch(mount, Nudge.NONE);
        this.alone = reach(0);
        this.helped = reach(most.helpPa());
    }

    private Reach reach(double helpPa) {
        double inside = mount.direction() == AirDirection.OUT ? helpPa : -helpPa;
        double coreFlow = branch.coreFlowM3PerS(inside, 0);
        double heatPerM3 = model.air().densityKgPerM3() * model.air().heatCapacityJPerKgK();
        double airWPerK = branch.wholeM3PerS(coreFlow) * heatPerM3;
        return new Reach(airWPerK, mostConductanceWPerK(coreFlow));
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

    Fitting fitting() {
        return fitting;
    }

    Machine.FanMount mount() {
        return mount;
    }

    AirBranch branch() {
        return branch;
    }

    SoundPower sound() {
        return sound;
    }

    boolean blowsOut() {
        return mount.direction() == AirDirection.OUT;
    }

    /** With the pressure inside equal to the room's. */
    Reach alone() {
        return alone;
    }

    /** With all the help there can be. */
    Reach helped() {
        return helped;
    }
}

package loopwright.rank;

import java.util.List;
import loopwright.loop.CoolingBound;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirResistance;

/**
 * Bounds of a case's air before it is solved: between which steps the pressure inside lies, and what that lets mounts do.
 *
 * <p>The net flow in falls with the pressure. Where even the most that can come in does not exceed the least that can leave, the
 * pressure is at most that step's; where the least that comes in is not below the most that leaves, it is at least that. Mounts
 * that blow in do most at the lower of these, those that blow out at the higher; {@link CoolingBound} does the rest.
 */
final class AirBounds {

    private final List<AirResistance> vents;
    private final double[] passiveM3PerS;
    private final double heatPerM3;

    /** How far computed flows may be off, m³/s: far above a root's accuracy, far below any flow. */
    private static final double SLACK_M3_PER_S = 1e-9;

    /**
     * Bounds for some passive openings at a duty.
     *
     * @param heatPerM3 heat that a cubic metre of air takes, J/(m³·K)
     */
    AirBounds(List<AirResistance> vents, int dutyPercent, double heatPerM3) {
        this.vents = vents;
        this.heatPerM3 = heatPerM3;
        this.passiveM3PerS = new double[PressureSteps.count()];
        for (int step = 0; step < passiveM3PerS.length; step++) {
            for (AirResistance vent : this.vents) {
                passiveM3PerS[step] += vent.flowM3PerS(PressureSteps.pascal(step, dutyPercent));
            }
        }
    }

    /** A temperature that nothing with these floors undercuts, K over the room. */
    double leastOverRoomK(Core core, List<AirDirection> directions, List<Floor> floors) {
        int high = highest(directions, floors);
        int low = lowest(directions, floors, high);
        double in = 0;
        double out = 0;
        double air = Math.max(0, -passiveM3PerS[low]);
        for (int i = 0; i < floors.size(); i++) {
            if (directions.get(i) == AirDirection.OUT) {
                out += floors.get(i).mostWPerK(high);
            } else {
                in += floors.get(i).mostWPerK(PressureSteps.mirrored(low));
                air += floors.get(i).mostM3PerS(PressureSteps.mirrored(low));
            }
        }
        return CoolingBound.leastOverRoomK(core.heat().coolantW(), core.heat().caseW(), in, out, air * heatPerM3);
    }

    /** The lowest step that the pressure is surely not above; the last where none is known to be. */
    private int highest(List<AirDirection> directions, List<Floor> floors) {
        int no = -1;
        int yes = PressureSteps.count() - 1;
        while (yes - no > 1) {
            int step = (no + yes) >>> 1;
            if (mostNetIn(directions, floors, step) <= -SLACK_M3_PER_S) {
                yes = step;
            } else {
                no = step;
            }
        }
        return yes;
    }

    /** The highest step that the pressure is surely not below; the first where none is known to be. */
    private int lowest(List<AirDirection> directions, List<Floor> floors, int high) {
        int yes = 0;
        int no = high + 1;
        while (no - yes > 1) {
            int step = (no + yes) >>> 1;
            if (leastNetIn(directions, floors, step) >= SLACK_M3_PER_S) {
                yes = step;
            } else {
                no = step;
            }
        }
        return yes;
    }

    private double mostNetIn(List<AirDirection> directions, List<Floor> floors, int step) {
        double sum = -passiveM3PerS[step];
        for (int i = 0; i < floors.size(); i++) {
            sum += directions.get(i) == AirDirection.OUT
                    ? -floors.get(i).leastM3PerS(step)
                    : floors.get(i).mostM3PerS(PressureSteps.mirrored(step));
        }
        return sum;
    }

    private double leastNetIn(List<AirDirection> directions, List<Floor> floors, int step) {
        double sum = -passiveM3PerS[step];
        for (int i = 0; i < floors.size(); i++) {
            sum += directions.get(i) == AirDirection.OUT
                    ? -floors.get(i).mostM3PerS(step)
                    : floors.get(i).leastM3PerS(PressureSteps.mirrored(step));
        }
        return sum;
    }
}

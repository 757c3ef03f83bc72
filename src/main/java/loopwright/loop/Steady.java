package loopwright.loop;

import java.util.List;
import loopwright.loop.air.CaseFlow;

/**
 * A machine in steady state.
 *
 * @param water what the coolant does
 * @param air what the air does
 * @param stops the coolant after each station, in loop order
 * @param radiators each radiator, in loop order
 * @param caseC air inside
 * @param roomC air outside
 */
public record Steady(
        Water water, CaseFlow air, List<Stop> stops, List<RadiatorState> radiators, double caseC, double roomC)
        implements SteadyState {

    /** Copies. */
    public Steady {
        stops = List.copyOf(stops);
        radiators = List.copyOf(radiators);
    }

    /**
     * The coolant.
     *
     * @param flowM3PerS through the loop
     * @param headPa of the pump
     * @param warmestC warmest place
     * @param coldestC coldest place
     * @param residual heat that is not accounted for, as a share of the load
     */
    public record Water(double flowM3PerS, double headPa, double warmestC, double coldestC, double residual) {
        /** Halfway between the warmest and the coldest place: what is meant by the coolant's temperature. */
        public double meanC() {
            return (warmestC + coldestC) / 2;
        }
    }

    /**
     * The coolant at a station.
     *
     * @param inC before it
     * @param outC after it
     * @param lossPa pressure it takes
     * @param flowM3PerS through it: less than the loop's where sources stand side by side
     */
    public record Stop(String name, double inC, double outC, double lossPa, double flowM3PerS) {
        /** Halfway. */
        public double meanC() {
            return (inC + outC) / 2;
        }
    }

    /**
     * A radiator at work.
     *
     * @param effectiveness ε, of the smaller capacity rate
     * @param conductanceUAWPerK coolant to air, over all fins
     * @param heatW it takes out
     * @param inletC air it breathes
     * @param outletC air it leaves
     * @param meanConductanceWPerK heat over coolant mean less incoming air
     */
    public record RadiatorState(
            String name,
            double effectiveness,
            double conductanceUAWPerK,
            double heatW,
            double inletC,
            double outletC,
            double meanConductanceWPerK) {}

    /** Mean coolant over the room, K. */
    public double coolantOverRoomK() {
        return water.meanC() - roomC;
    }

    /** Air inside over the room, K. */
    public double caseOverRoomK() {
        return caseC - roomC;
    }
}

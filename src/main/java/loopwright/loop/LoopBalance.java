package loopwright.loop;

import java.util.List;
import loopwright.loop.air.CaseFlow;
import loopwright.loop.exchange.Crossflow;
import loopwright.loop.fluid.Air;
import loopwright.loop.fluid.Liquid;
import loopwright.loop.water.FlowBalance;
import loopwright.loop.water.HeadCurve;
import loopwright.loop.water.LiquidState;
import loopwright.loop.water.Series;

/**
 * The heat balance of a loop: coolant flow, the coolant after each station, and the air inside the case.
 *
 * <p>With the coolant's properties frozen at a mean temperature everything is linear ({@link FrozenLoop}); the mean
 * temperature is the one that gives itself back.
 *
 * <p><b>Units.</b> SI and °C.
 *
 * <p><b>Valid for</b> steady state; a well-mixed case; air of the room's density; the coolant's properties at its mean
 * temperature. Radiators that blow in breathe the room and warm the case; those that blow out breathe the case.
 *
 * <p><b>Accuracy.</b> The heat closes to 1e-10 of the load. What the answer is worth is a matter of what goes in.
 *
 * <p><b>Source.</b> Conservation of heat; effectiveness: {@link Crossflow}.
 */
public final class LoopBalance {

    /** Largest last change of the mean temperature, K; over a rise of some kelvin that closes the heat to 1e-10. */
    private static final double ACCURACY_K = 1e-10;

    /** Most rounds; a round takes off nine tenths and more, so that twelve are plenty. */
    private static final int ROUNDS_MAX = 60;

    /** First guess of the coolant's rise over the room, K. */
    private static final double FIRST_RISE_K = 10;

    private final Liquid liquid;
    private final HeadCurve pump;
    private final List<Station> stations;
    private final Series whole;
    private final Surroundings surroundings;

    /**
     * What is around the loop.
     *
     * @param air of the room
     * @param flow air through the case
     * @param heatW that stays in the case's air besides what radiators bring in
     */
    public record Surroundings(Air air, CaseFlow flow, double heatW) {
        /** Heat that a flow of this air carries for each kelvin, W/K. */
        double capacityWPerK(double flowM3PerS) {
            return flowM3PerS * (air.densityKgPerM3() * air.heatCapacityJPerKgK());
        }
    }

    /** The balance of a loop. */
    public LoopBalance(Liquid liquid, HeadCurve pump, List<Station> stations, Surroundings surroundings) {
        this.liquid = liquid;
        this.pump = pump;
        this.stations = List.copyOf(stations);
        this.whole = new Series(stations.stream().map(Station::passage).toList());
        this.surroundings = surroundings;
    }

    /**
     * Solves it.
     *
     * @throws ArithmeticException if it does not converge, with what did not
     */
    public SteadyState solve() {
        double caseWPerK = surroundings.capacityWPerK(surroundings.flow().inM3PerS());
        if (!(caseWPerK > 0)) {
            return new SteadyState.None("no air passes through the case");
        }
        double meanC = surroundings.air().temperatureC() + FIRST_RISE_K;
        double beforeC = meanC;
        double changeBeforeK = 0;
        double flowM3PerS = 0;
        for (int round = 0; round < ROUNDS_MAX; round++) {
            LiquidState state = new LiquidState(liquid.densityKgPerM3(meanC), liquid.viscosityPaS(meanC));
            FlowBalance flow = FlowBalance.find(pump, whole, state, flowM3PerS);
            if (flow instanceof FlowBalance.Still still) {
                return new SteadyState.None("the coolant does not move: " + still.why());
            }
            FlowBalance.Flowing flowing = (FlowBalance.Flowing) flow;
            flowM3PerS = flowing.flowM3PerS();
            FrozenLoop frozen =
                    new FrozenLoop(stations, surroundings, caseWPerK, new Frozen(liquid, meanC, state, flowing));
            if (!frozen.isCooled()) {
                return new SteadyState.None("no radiator gets any air: nothing takes the heat out of the coolant");
            }
            double changeK = frozen.meanC() - meanC;
            if (Math.abs(changeK) <= ACCURACY_K) {
                return frozen.steady();
            }
            double secant = meanC - changeK * (meanC - beforeC) / (changeK - changeBeforeK);
            boolean useful = round > 0 && Double.isFinite(secant) && Math.abs(secant - meanC) < 2 * Math.abs(changeK);
            beforeC = meanC;
            changeBeforeK = changeK;
            meanC = useful ? secant : meanC + changeK;
        }
        throw new ArithmeticException("the coolant's mean temperature did not converge in " + ROUNDS_MAX
                + " rounds: last " + meanC + " °C, still changing by " + changeBeforeK + " K");
    }

    /**
     * The coolant with its properties frozen.
     *
     * @param atC the temperature they are taken at
     */
    record Frozen(Liquid liquid, double atC, LiquidState state, FlowBalance.Flowing flow) {
        double capacityWPerK() {
            return flow.flowM3PerS() * state.densityKgPerM3() * liquid.heatCapacityJPerKgK(atC);
        }
    }
}

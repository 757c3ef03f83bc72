package loopwright.loop;

import java.util.ArrayList;
import java.util.List;
import loopwright.loop.LoopBalance.Frozen;
import loopwright.loop.LoopBalance.Surroundings;
import loopwright.loop.air.AirDirection;
import loopwright.loop.exchange.Crossflow;

/**
 * A loop with the coolant's properties frozen: two linear equations, for the coolant at the start and the air inside.
 *
 * <p>Over the room, the coolant after each station is {@code own + start·S + inside·A}: a source adds heat over capacity, a
 * radiator takes it a share {@code x/C} nearer to the air it breathes, x = ε·C_min. Closing the loop gives one equation,
 * the heat that the case's air carries off the other.
 *
 * <p><b>Units.</b> W, W/K, K over the room.
 */
final class FrozenLoop {

    private final List<Station> stations;
    private final Surroundings around;
    private final Frozen coolant;
    private final double capacityWPerK;
    private final double caseCapacityWPerK;
    private final double[] exchangeWPerK;
    private final double[] effectiveness;
    private final double[] conductanceUA;
    private final double startK;
    private final double insideK;

    /**
     * A frozen loop.
     *
     * @param caseWPerK capacity rate of all air that comes into the case, above 0
     */
    FrozenLoop(List<Station> stations, Surroundings around, double caseWPerK, Frozen coolant) {
        this.stations = stations;
        this.around = around;
        this.coolant = coolant;
        capacityWPerK = coolant.capacityWPerK();
        caseCapacityWPerK = caseWPerK;
        exchangeWPerK = new double[stations.size()];
        effectiveness = new double[stations.size()];
        conductanceUA = new double[stations.size()];
        for (int i = 0; i < stations.size(); i++) {
            if (stations.get(i) instanceof Station.Cooler cooler) {
                exchange(i, cooler);
            }
        }
        double[] start = solve();
        startK = start[0];
        insideK = start[1];
    }

    private void exchange(int i, Station.Cooler cooler) {
        double airWPerK = around.capacityWPerK(around.flow().coreFlowM3PerS(cooler.branch()));
        if (airWPerK <= 0) {
            return;
        }
        double waterSide = cooler.core()
                .waterSideWPerK(
                        coolant.flow().flowM3PerS(),
                        coolant.state().densityKgPerM3(),
                        coolant.state().viscosityPaS(),
                        coolant.liquid().heatCapacityJPerKgK(coolant.atC()),
                        coolant.liquid().conductivityWPerMK(coolant.atC()));
        conductanceUA[i] = cooler.core().conductanceUAWPerK(cooler.airSideWPerK(), waterSide);
        double least = Math.min(airWPerK, capacityWPerK);
        double most = Math.max(airWPerK, capacityWPerK);
        effectiveness[i] = Crossflow.effectiveness(conductanceUA[i] / least, least / most);
        exchangeWPerK[i] = effectiveness[i] * least;
    }

    /** Whether any radiator takes heat out. */
    boolean isCooled() {
        for (double exchange : exchangeWPerK) {
            if (exchange > 0) {
                return true;
            }
        }
        return false;
    }

    private boolean breathesCase(Station.Cooler cooler) {
        return around.flow().air().branches().get(cooler.branch()).direction() == AirDirection.OUT;
    }

    /** The start and the inside, K over the room, by Cramer's rule on the two balances. */
    private double[] solve() {
        double own = 0;
        double perStart = 1;
        double perInside = 0;
        double warmOwn = around.heatW();
        double warmPerStart = 0;
        double warmPerInside = -caseCapacityWPerK;
        for (int i = 0; i < stations.size(); i++) {
            Station station = stations.get(i);
            own += heatW(station) / capacityWPerK;
            if (station instanceof Station.Cooler cooler) {
                double share = exchangeWPerK[i] / capacityWPerK;
                if (breathesCase(cooler)) {
                    perInside += share - share * perInside;
                } else {
                    warmOwn += exchangeWPerK[i] * own;
                    warmPerStart += exchangeWPerK[i] * perStart;
                    warmPerInside += exchangeWPerK[i] * perInside;
                    perInside -= share * perInside;
                }
                own -= share * own;
                perStart -= share * perStart;
            }
        }
        // (perStart − 1)·S + perInside·A = −own and warmPerStart·S + warmPerInside·A = −warmOwn
        double a = perStart - 1;
        double determinant = a * warmPerInside - perInside * warmPerStart;
        return new double[] {
            (perInside * warmOwn - own * warmPerInside) / determinant, (warmPerStart * own - a * warmOwn) / determinant
        };
    }

    private static double heatW(Station station) {
        if (station instanceof Station.Source source) {
            return source.heatW();
        }
        if (station instanceof Station.Beside beside) {
            double sum = 0;
            for (Station.Source source : beside.sources()) {
                sum += source.heatW();
            }
            return sum;
        }
        return 0;
    }

    /** Mean coolant, °C. */
    double meanC() {
        double[] range = range();
        return around.air().temperatureC() + (range[0] + range[1]) / 2;
    }

    /** Coldest and warmest place, K over the room. */
    private double[] range() {
        double at = startK;
        double[] out = {at, at};
        for (int i = 0; i < stations.size(); i++) {
            at = after(i, at);
            out[0] = Math.min(out[0], at);
            out[1] = Math.max(out[1], at);
        }
        return out;
    }

    /** The coolant after a station, K over the room. */
    private double after(int i, double beforeK) {
        Station station = stations.get(i);
        if (station instanceof Station.Cooler cooler) {
            double airK = breathesCase(cooler) ? insideK : 0;
            return beforeK - exchangeWPerK[i] / capacityWPerK * (beforeK - airK);
        }
        return beforeK + heatW(station) / capacityWPerK;
    }

    /** The whole state. */
    Steady steady() {
        double roomC = around.air().temperatureC();
        List<Steady.Stop> stops = new ArrayList<>();
        List<Steady.RadiatorState> radiators = new ArrayList<>();
        double at = startK;
        double heatInW = 0;
        double heatOutW = 0;
        for (int i = 0; i < stations.size(); i++) {
            Station station = stations.get(i);
            double next = after(i, at);
            if (station instanceof Station.Beside beside) {
                branches(beside, at, stops);
            }
            stops.add(new Steady.Stop(
                    station.name(),
                    roomC + at,
                    roomC + next,
                    station.passage().lossPa(coolant.flow().flowM3PerS(), coolant.state()),
                    coolant.flow().flowM3PerS()));
            heatInW += heatW(station);
            if (station instanceof Station.Cooler cooler) {
                Steady.RadiatorState radiator = radiator(i, cooler, at);
                radiators.add(radiator);
                heatOutW += radiator.heatW();
            }
            at = next;
        }
        double[] range = range();
        return new Steady(
                new Steady.Water(
                        coolant.flow().flowM3PerS(),
                        coolant.flow().headPa(),
                        roomC + range[1],
                        roomC + range[0],
                        Math.abs(heatOutW - heatInW) / Math.max(heatInW, Double.MIN_NORMAL)),
                around.flow(),
                stops,
                radiators,
                roomC + insideK,
                roomC);
    }

    private void branches(Station.Beside beside, double beforeK, List<Steady.Stop> stops) {
        double roomC = around.air().temperatureC();
        List<Double> flows = beside.passage().branchFlowsM3PerS(coolant.flow().flowM3PerS(), coolant.state());
        for (int b = 0; b < beside.sources().size(); b++) {
            Station.Source source = beside.sources().get(b);
            double share = flows.get(b) / coolant.flow().flowM3PerS();
            stops.add(new Steady.Stop(
                    source.name(),
                    roomC + beforeK,
                    roomC + beforeK + source.heatW() / (capacityWPerK * share),
                    source.passage().lossPa(flows.get(b), coolant.state()),
                    flows.get(b)));
        }
    }

    private Steady.RadiatorState radiator(int i, Station.Cooler cooler, double beforeK) {
        double roomC = around.air().temperatureC();
        double airK = breathesCase(cooler) ? insideK : 0;
        double heatW = exchangeWPerK[i] * (beforeK - airK);
        double airWPerK = around.capacityWPerK(around.flow().coreFlowM3PerS(cooler.branch()));
        double fall = exchangeWPerK[i] / capacityWPerK;
        return new Steady.RadiatorState(
                cooler.name(),
                effectiveness[i],
                conductanceUA[i],
                heatW,
                roomC + airK,
                airWPerK > 0 ? roomC + airK + heatW / airWPerK : roomC + airK,
                exchangeWPerK[i] / (1 - fall / 2));
    }
}

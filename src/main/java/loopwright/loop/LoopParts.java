package loopwright.loop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.standard.Practice;
import loopwright.loop.air.CaseFlow;
import loopwright.loop.exchange.Crossflow;
import loopwright.loop.exchange.RadiatorCore;
import loopwright.loop.fluid.CoolantLiquid;
import loopwright.loop.fluid.Liquid;
import loopwright.loop.fluid.Water;
import loopwright.loop.water.FittingLoss;
import loopwright.loop.water.FlowBalance;
import loopwright.loop.water.HeadCurve;
import loopwright.loop.water.LiquidState;
import loopwright.loop.water.MeasuredLoss;
import loopwright.loop.water.Parallel;
import loopwright.loop.water.Passage;
import loopwright.loop.water.PumpCurve;
import loopwright.loop.water.ScaledLoss;
import loopwright.loop.water.Series;
import loopwright.loop.water.SuddenChange;
import loopwright.loop.water.TubeRun;
import loopwright.quantity.Units;

/**
 * The water side of a machine: its pump's head and the stations of its loop.
 *
 * <p>Loop order: pump, blocks, radiators in the chassis's order, then tube, fittings and reservoir taken together, as where
 * they lie in between changes neither flow nor heat; where the runs are planned, blocks and radiators stand as planned. Curves of parts are worked out once and kept.
 */
final class LoopParts {

    private final Practice practice;
    private final MachineModel model;
    private final Map<List<Block.LossPoint>, Passage> measured = new HashMap<>();
    private final Map<String, Liquid> liquids = new HashMap<>();
    private final Map<Machine.PumpAt, PumpCurve> pumps = new HashMap<>();

    LoopParts(Practice practice, MachineModel model) {
        this.practice = practice;
        this.model = model;
    }

    /** The pump's head at its duty. */
    HeadCurve head(Machine.PumpAt at, Nudge nudge) {
        double factor = nudge.factor(Scatter.pump(at.pump().id()), Scatter.PUMP);
        return factor == 1 // exactly: the usual case
                ? pumps.computeIfAbsent(at, a -> curve(a, 1))
                : curve(at, factor);
    }

    private static PumpCurve curve(Machine.PumpAt at, double factor) {
        List<PumpCurve.Point> points = at.pump().water().curve().stream()
                .map(p -> new PumpCurve.Point(
                        Units.m3PerSOfLPerMin(p.flowLPerMin()), p.headKPa() * Units.PA_PER_KPA * factor))
                .toList();
        return new PumpCurve(points).atSpeed(at.speedShare());
    }

    /** The stations of the loop, in order. */
    List<Station> stations(Machine machine, CaseFlow flow, Nudge nudge) {
        Machine.Water water = machine.water();
        double lossFactor = nudge.factor(Scatter.WATER_LOSS_NAME, Scatter.WATER_LOSS);
        List<Station> out = new ArrayList<>();
        double boreM = boreM(water.runs());
        Passage tank = new Series(List.of(SuddenChange.exit(boreM), SuddenChange.inlet(boreM)));
        out.add(new Station.Source(
                "reservoir and pump", times(tank, lossFactor), water.pump().heatW()));
        List<Station.Source> blocks = new ArrayList<>();
        for (Machine.BlockAt block : water.blocks()) {
            double heatFactor = nudge.factor(Scatter.heat(block.part()), Scatter.HEAT);
            Passage passage = measured(block.flow().loss());
            blocks.add(new Station.Source(block.name(), times(passage, lossFactor), block.heatW() * heatFactor));
        }
        if (water.order() == BlockOrder.PARALLEL && blocks.size() > 1) {
            Parallel side =
                    new Parallel(blocks.stream().map(Station.Source::passage).toList());
            out.add(new Station.Beside("blocks, side by side", side, blocks));
        } else {
            out.addAll(blocks);
        }
        int parts = 1 + blocks.size();
        Coolers coolers = new Coolers(machine, flow, nudge);
        for (int i = 0; i < machine.mounts().size(); i++) {
            if (machine.mounts().get(i).radiator().isPresent()) {
                out.add(cooler(coolers, i, lossFactor));
                parts++;
            }
        }
        water.runs().planned().ifPresent(p -> arrange(out, p.passing()));
        out.add(new Station.Way("tube and fittings", times(runs(water.runs(), parts), lossFactor)));
        return out;
    }

    /** Puts what is named into the order of the names, behind the pump; the rest keeps its order behind it. */
    private static void arrange(List<Station> stations, List<String> passing) {
        stations.subList(1, stations.size()).sort(Comparator.comparingInt(s -> {
            int place = passing.indexOf(s.name());
            return place < 0 ? passing.size() : place;
        }));
    }

    private record Coolers(Machine machine, CaseFlow flow, Nudge nudge) {}

    private Station cooler(Coolers of, int branch, double lossFactor) {
        Machine.FanMount mount = of.machine().mounts().get(branch);
        Machine.RadiatorAt at = mount.radiator().orElseThrow();
        Radiator radiator = at.radiator();
        RadiatorCore core = model.core(radiator);
        double unmasked = 1 - at.maskedShare();
        double faceSpeed = of.flow().coreFlowM3PerS(branch) / (core.faceAreaM2() * unmasked);
        double sigma = core.isMeasured() ? Scatter.FINS_MEASURED : Scatter.FINS;
        double factor = of.nudge().factor(Scatter.FINS_NAME, sigma)
                * of.nudge().factor(Scatter.radiator(radiator.id()), Scatter.RADIATOR_OWN);
        return new Station.Cooler(
                mount.mount() + " radiator",
                times(measured(radiator.core().loss()), lossFactor),
                factor == 1 ? core : core.scaled(factor),
                branch,
                unmasked * model.inAir(radiator).airSideWPerK(faceSpeed));
    }

    private Passage runs(Machine.Runs runs, int parts) {
        double boreM = boreM(runs);
        TubeRun tube = new TubeRun(boreM, runs.lengthM(), practice.loop().roughnessMm() * Units.M_PER_MM);
        if (runs.planned().isPresent()) {
            return turning(tube, runs.planned().get(), boreM);
        }
        int elbows = parts * practice.loop().elbowsPerPart();
        return elbows == 0
                ? tube
                : new Series(List.of(tube, new FittingLoss(FittingLoss.Kind.ELBOW_90, boreM, elbows)));
    }

    /** Bends of tube count as elbows of long radius, the widest there is a figure for. */
    private static Passage turning(TubeRun tube, Machine.Turns turns, double boreM) {
        List<Passage> all = new ArrayList<>(List.of(tube));
        addFittings(all, FittingLoss.Kind.STRAIGHT, boreM, turns.straights());
        addFittings(all, FittingLoss.Kind.ELBOW_90, boreM, turns.elbows());
        addFittings(all, FittingLoss.Kind.ELBOW_90_LONG, boreM, turns.bends());
        return new Series(all);
    }

    private static void addFittings(List<Passage> all, FittingLoss.Kind kind, double boreM, int count) {
        if (count > 0) {
            all.add(new FittingLoss(kind, boreM, count));
        }
    }

    private static double boreM(Machine.Runs runs) {
        return runs.tube().boreMm().valueHmm() * Units.M_PER_HMM;
    }

    private Passage measured(List<Block.LossPoint> points) {
        return measured.computeIfAbsent(
                points,
                list -> new MeasuredLoss(list.stream()
                        .map(p -> new MeasuredLoss.Point(
                                Units.m3PerSOfLPerMin(p.flowLPerMin()), p.lossKPa() * Units.PA_PER_KPA))
                        .toList()));
    }

    /** A coolant's properties. */
    Liquid liquid(Coolant coolant) {
        return liquids.computeIfAbsent(coolant.id(), id -> CoolantLiquid.of(coolant));
    }

    /** Coolant that is plenty: what sheets rate radiators at, L/min; common practice (1 gal/min). */
    private static final double RATED_FLOW_L_PER_MIN = 4;

    /** Warmth of coolant that sheets rate radiators at, °C; common practice. */
    private static final double RATED_C = 35;

    /** What a core conducts with plenty of water, coolant mean to incoming air, W/K. */
    double ratedConductanceWPerK(RadiatorCore core, double airSideWPerK, double airWPerK) {
        Liquid rated = new Water();
        double flow = Units.m3PerSOfLPerMin(RATED_FLOW_L_PER_MIN);
        double capacity = flow * rated.densityKgPerM3(RATED_C) * rated.heatCapacityJPerKgK(RATED_C);
        double conductance = core.conductanceUAWPerK(airSideWPerK, side(core, rated, RATED_C, flow));
        double least = Math.min(airWPerK, capacity);
        double exchange = least * Crossflow.effectiveness(conductance / least, least / Math.max(airWPerK, capacity));
        return exchange / (1 - exchange / capacity / 2);
    }

    private static double side(RadiatorCore core, Liquid liquid, double atC, double flowM3PerS) {
        return core.waterSideWPerK(
                flowM3PerS,
                liquid.densityKgPerM3(atC),
                liquid.viscosityPaS(atC),
                liquid.heatCapacityJPerKgK(atC),
                liquid.conductivityWPerMK(atC));
    }

    /** The coolant's side of a core in a loop without any radiator's loss, at its warmest: no loop with it has more. */
    double waterSideMostWPerK(Machine.Water water, RadiatorCore core, double warmC) {
        Liquid liquid = liquid(water.coolant());
        List<Passage> blocks = new ArrayList<>();
        water.blocks().forEach(b -> blocks.add(measured(b.flow().loss())));
        Passage whole =
                water.order() == BlockOrder.PARALLEL && blocks.size() > 1 ? new Parallel(blocks) : new Series(blocks);
        LiquidState state = new LiquidState(liquid.densityKgPerM3(warmC), liquid.viscosityPaS(warmC));
        FlowBalance flow = FlowBalance.find(head(water.pump(), Nudge.NONE), whole, state);
        return flow instanceof FlowBalance.Flowing flowing ? side(core, liquid, warmC, flowing.flowM3PerS()) : 0;
    }

    private static Passage times(Passage passage, double factor) {
        return factor == 1 // exactly: the usual case
                ? passage
                : new ScaledLoss(passage, factor);
    }
}

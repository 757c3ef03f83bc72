package loopwright.answer;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.PracticeElectric;
import loopwright.catalog.standard.StandardElectric.EfficiencyLevel;
import loopwright.catalog.standard.StandardElectric.Excursion;
import loopwright.catalog.standard.StandardElectric.Mains;
import loopwright.fit.FitCase;
import loopwright.fit.rules.Role;
import loopwright.loop.Machine;
import loopwright.power.EfficiencyLevels;
import loopwright.power.Excursions;
import loopwright.power.Load;
import loopwright.power.LoadParts;
import loopwright.power.RailBudget;
import loopwright.power.SupplyLoss;
import loopwright.power.SupplyNoise;
import loopwright.power.Surge;
import loopwright.power.header.FanGroup;
import loopwright.power.header.HeaderAt;
import loopwright.power.header.PumpFeed;
import loopwright.power.header.WiringLimits;
import loopwright.power.header.WiringPlan;
import loopwright.power.header.WiringSearch;
import loopwright.power.header.WiringShortfall;
import loopwright.power.header.WiringTask;
import loopwright.rank.Build;
import loopwright.rank.CoreHeat;

/** The electrics of one build: what each rail carries, what the supply makes of it, and what feeds fans and pump. */
public final class Powering {

    private static final double PERCENT = 100;

    /** Milliamperes in an ampere. */
    private static final int MILLI = 1000;

    private final FitCase fitCase;
    private final Build build;
    private final LoadParts parts;
    private final Supply supply;
    private final Practice practice;

    Powering(FitCase fitCase, Build build) {
        this.fitCase = fitCase;
        this.build = build;
        this.parts = CoreHeat.loadParts(fitCase, build.chosen());
        this.supply = build.chosen().the(Role.SUPPLY, Supply.class);
        this.practice = fitCase.catalog().practice();
    }

    /** The supply. */
    public Supply supply() {
        return supply;
    }

    /** The brief's currency. */
    public String currency() {
        return fitCase.brief().terms().currency();
    }

    /** What the parts draw in each state. */
    public Map<LoadParts.State, RailBudget> budgets() {
        Map<LoadParts.State, RailBudget> out = new EnumMap<>(LoadParts.State.class);
        for (LoadParts.State state : LoadParts.State.values()) {
            out.put(state, parts.budget(state, practice));
        }
        return out;
    }

    /** What the rails bring, mW; none where the supply does not say. */
    public Optional<RailBudget> capacity() {
        return supply.rails().map(r -> new RailBudget(RailBudget.twelveMilliW(r), Load.milliwatts(r.lowW())));
    }

    /**
     * The supply at a load.
     *
     * @param loadW delivered
     * @param mainsW drawn
     * @param noiseDBA at 1 m
     */
    public record AtLoad(
            LoadParts.State state,
            double loadW,
            double loadPercent,
            double efficiencyPercent,
            double mainsW,
            double noiseDBA) {

        /** What it turns into heat, W. */
        public double heatW() {
            return mainsW - loadW;
        }
    }

    /** The supply in each state. */
    public List<AtLoad> atLoads() {
        double usual = practice.heat().supplyEfficiencyPercent();
        List<AtLoad> out = new ArrayList<>();
        budgets().forEach((state, budget) -> {
            double loadW = LoadParts.watts(budget.sumMilliW());
            out.add(new AtLoad(
                    state,
                    loadW,
                    PERCENT * loadW / supply.output().ratedW(),
                    SupplyLoss.efficiencyPercent(supply, loadW, usual),
                    SupplyLoss.mainsW(supply, loadW, usual),
                    SupplyNoise.levelDBA(supply, loadW)));
        });
        return out;
    }

    /** The level of efficiency that its sheet reaches in Europe. */
    public Optional<EfficiencyLevel> level() {
        return fitCase.catalog()
                .standards()
                .electric()
                .flatMap(s -> EfficiencyLevels.reached(supply, s.efficiency(), Mains.V230));
    }

    /** The burst. */
    public Surge surge() {
        return parts.surge(practice);
    }

    /** What the supply stands for 100 µs, W; none where it does not say. */
    public Optional<Double> stoodW() {
        return supply.rails()
                .flatMap(Supply.Rails::surgePercent)
                .map(p -> Surge.watts(Surge.stoodScaled(supply.output(), p)));
    }

    /** A published burst for this supply's rating, and what it may carry between bursts, W. */
    public record Burst(Excursion row, double burstW, double betweenW) {}

    /** Published bursts that this supply stands by its own word. */
    public List<Burst> bursts() {
        int stood = supply.rails().flatMap(Supply.Rails::surgePercent).orElse(0);
        List<Burst> out = new ArrayList<>();
        fitCase.catalog()
                .standards()
                .electric()
                .ifPresent(s -> s.excursions().stream()
                        .filter(e -> e.loadPercent() <= stood)
                        .forEach(e -> out.add(new Burst(
                                e,
                                Excursions.burstW(supply.output().ratedW(), e),
                                Excursions.betweenW(supply.output().ratedW(), e)))));
        return out;
    }

    /** A kind of connector: how many the build wants, and how many there are. */
    public record Connector(String name, int wanted, int there) {}

    /** The supply's connectors. */
    public List<Connector> connectors() {
        Supply.Output output = supply.output();
        int sixPin = parts.card().electric().map(e -> e.sixPinPlugs()).orElse(0);
        int forDrives = fitCase.placedDrives().size();
        int forOthers = wiring().map(p -> (int) p.sata()).orElse(0);
        int codedW = supply.rails().flatMap(Supply.Rails::sixteenPinW).orElse(0);
        return List.of(
                new Connector("processor", parts.processor().heat().processorPlugs(), output.processorPlugs()),
                new Connector(
                        "card, 8-pin (6 + 2)",
                        parts.card().power().eightPinPlugs() + sixPin,
                        output.cardEightPinPlugs()),
                new Connector(
                        "card, 16-pin" + (codedW > 0 ? " coded " + codedW + " W" : ""),
                        parts.card().power().sixteenPinPlugs(),
                        output.cardSixteenPinPlugs()),
                new Connector("SATA: drives", forDrives, output.sataPlugs()),
                new Connector("SATA: hubs and pump", forOthers, output.sataPlugs() - forDrives));
    }

    /** What fans and pump are fed from. */
    public WiringTask task() {
        PracticeElectric planned = practice.plannedElectric();
        double factor = planned.headers().startFactor();
        List<FanGroup> fans = new ArrayList<>();
        for (Machine.FanMount mount : build.machine().mounts()) {
            Machine.Fans row = mount.fans();
            fans.add(FanGroup.of(mount.mount(), row.fan(), row.row() * row.layers(), factor));
        }
        int sata =
                Math.max(0, supply.output().sataPlugs() - fitCase.placedDrives().size());
        return new WiringTask(
                fans,
                Optional.of(PumpFeed.of(parts.pump(), factor)),
                new WiringTask.There(
                        HeaderAt.of(parts.board(), planned.headers().limitA()), sata, peripheral()),
                fitCase.catalog().all(Lead.class),
                WiringLimits.of(practice, fitCase.catalog().standards()));
    }

    /** Older drive plugs of the supply; one that gives no cables is taken to have one. */
    private int peripheral() {
        if (supply.cables().isEmpty()) {
            return 1;
        }
        return supply.cables().stream()
                .filter(c -> c.plug() == Plug.PERIPHERAL_4)
                .mapToInt(Supply.Cable::plugs)
                .sum();
    }

    /** The cheapest way to feed fans and pump; none where something is missing. */
    public Optional<WiringPlan> wiring() {
        return WiringSearch.find(task());
    }

    /** What is missing for that. */
    public Optional<WiringShortfall> shortfall() {
        WiringTask task = task();
        int usualMilliA = (int) Math.round(practice.plannedElectric().headers().limitA() * MILLI);
        return WiringSearch.find(task).isPresent()
                ? Optional.empty()
                : Optional.of(WiringShortfall.of(task, usualMilliA));
    }

    /** The pump's duty in this build, percent, and the least that a header should hold it at. */
    public Optional<String> pumpCaution() {
        int least = practice.plannedElectric().headers().pumpDutyMinPercent();
        double duty = build.machine().water().pump().duty().percent();
        boolean onHeader = wiring().flatMap(WiringPlan::pump)
                .filter(p -> p.feed().way() == PumpFeed.Way.HEADER)
                .isPresent();
        return onHeader && duty < least
                ? Optional.of("the pump turns at " + Math.round(duty) + " %: on a header hold it at " + least
                        + " % or more, common practice")
                : Optional.empty();
    }
}

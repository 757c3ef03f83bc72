package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Coolant;
import loopwright.catalog.part.Cover;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.quantity.Dimension;
import loopwright.testing.SmallParts;

/** Parts with drawn prices, and more parts that measure the same but cost, cool or sound otherwise. */
final class RankParts {
    private final Dice dice;
    private final PlusMinus plusMinus;
    private final List<Part> all = new ArrayList<>();

    /** How many more parts than one of each there may be. */
    private int spare;

    /** Whether one port of each radiator is in the middle: there, unknown and known look alike. */
    private final boolean middlePorts;

    /** Parts; the larger the rest of the case, the fewer more than the least, as every combination is walked. */
    RankParts(Dice dice, PlusMinus plusMinus, int size) {
        this.dice = dice;
        this.plusMinus = plusMinus;
        this.spare = Math.max(0, 4 - size);
        this.middlePorts = dice.chance(25);
    }

    /** Coarse prices, so that builds tie. */
    static Purchase buy(Dice dice) {
        return new Purchase(dice.between(2, 12) * 500L, dice.oneOf(List.of(1, 2, 2, 3, 5, 7)));
    }

    List<Part> all() {
        return all;
    }

    void offer(Part part) {
        if (part instanceof Radiator radiator) {
            repeat(n -> add(n, radiator(radiator, n)));
        } else if (part instanceof Fan fan) {
            repeat(n -> add(n, fan(fan, n)));
        } else if (part instanceof Pump pump) {
            repeat(n -> add(n, pump(pump, n)));
        } else if (part instanceof Supply s) {
            all.add(new Supply(
                    s.id(),
                    s.id(),
                    s.variantOf(),
                    buy(dice),
                    s.form(),
                    s.body(),
                    s.plugRoomMm(),
                    output(s.output()),
                    s.rails(),
                    s.cables(),
                    List.of(),
                    s.massG()));
        } else if (part instanceof Processor p) {
            all.add(processor(p, 0));
            if (another(20)) {
                all.add(processor(p, 1));
            }
        } else if (part instanceof GraphicsCard card) {
            int kind = dice.between(0, 4);
            if (kind < 3) {
                all.add(card);
            }
            if (kind > 2 || (kind == 2 && another(100))) {
                all.add(wet(card));
            }
        } else if (part instanceof Cover c) {
            Purchase buy = new Purchase(dice.between(1, 9) * 500L, dice.oneOf(List.of(2, 6, 14)));
            all.add(new Cover(c.id(), c.id(), c.variantOf(), buy, c.body(), c.skin(), c.fixing()));
        } else {
            all.add(part);
        }
    }

    /** Whether there may be one part more than the least. */
    private boolean another(int percent) {
        boolean another = spare > 0 && dice.chance(percent);
        spare -= another ? 1 : 0;
        return another;
    }

    private void repeat(java.util.function.IntConsumer each) {
        int times = another(50) ? 2 : 1;
        for (int n = 0; n < times; n++) {
            each.accept(n);
        }
    }

    /** A part more than the least measures the same, but may be off by something else. */
    private void add(int number, Part part) {
        all.add(number == 0 ? part : plusMinus.of(Part.class, part));
    }

    private static String id(Part part, int number) {
        return number == 0 ? part.id() : part.id() + "-" + number;
    }

    private Radiator radiator(Radiator was, int n) {
        List<Radiator.Port> ports = new ArrayList<>();
        for (Radiator.Port port : was.ports().at()) {
            Dimension aside = n > 0 && dice.chance(50) ? Dimension.UNKNOWN : Dimension.ofHmm(0);
            ports.add(
                    middlePorts && ports.isEmpty()
                            ? new Radiator.Port(port.face(), port.fromFanAreaMm(), aside)
                            : port);
        }
        Radiator.Core core = SmallParts.core(
                dice.oneOf(List.of(12, 16, 16, 30)), dice.oneOf(List.of(10, 16, 22)), dice.between(1, 2), 100);
        return new Radiator(
                id(was, n),
                id(was, n),
                was.variantOf(),
                buy(dice),
                was.pattern(),
                was.body(),
                new Radiator.Ports(List.copyOf(ports), was.ports().metal()),
                core);
    }

    private Fan fan(Fan was, int n) {
        double flow = dice.oneOf(List.of(40, 60, 80, 90));
        double pressure = dice.oneOf(List.of(10, 20, 30));
        List<Fan.CurvePoint> curve = new ArrayList<>(List.of(new Fan.CurvePoint(0, pressure)));
        if (dice.chance(50)) {
            curve.add(new Fan.CurvePoint(flow / 2, pressure * 0.6));
        }
        curve.add(new Fan.CurvePoint(flow, 0));
        Fan.Air air = new Fan.Air(
                2000, dice.oneOf(List.of(20, 35, 60, 100)), List.copyOf(curve), dice.oneOf(List.of(15, 25, 25, 33)));
        return new Fan(id(was, n), id(was, n), was.variantOf(), buy(dice), was.frame(), air, was.electric());
    }

    private Pump pump(Pump was, int n) {
        Pump.Electric electric = new Pump.Electric(
                15, dice.oneOf(List.of(4, 8, 8, 15)), dice.oneOf(List.of(20, 80)), dice.oneOf(List.of(20, 30, 36)));
        return new Pump(
                id(was, n), id(was, n), was.variantOf(), buy(dice), was.kind(), was.body(), was.water(), electric);
    }

    /** Half of them say how efficient they are. */
    private Supply.Output output(Supply.Output was) {
        List<Supply.EfficiencyPoint> points = dice.chance(50)
                ? List.of()
                : List.of(
                        new Supply.EfficiencyPoint(20, dice.oneOf(List.of(60, 80))),
                        new Supply.EfficiencyPoint(dice.oneOf(List.of(40, 70)), dice.oneOf(List.of(85, 90))),
                        new Supply.EfficiencyPoint(100, 70));
        return new Supply.Output(
                was.ratedW(),
                was.processorPlugs(),
                was.cardEightPinPlugs(),
                was.cardSixteenPinPlugs(),
                was.sataPlugs(),
                was.noiseMaxDBA(),
                points);
    }

    private Processor processor(Processor was, int n) {
        Processor.Heat heat = new Processor.Heat(
                60, dice.oneOf(List.of(40, 80, 100)), was.heat().processorPlugs());
        return new Processor(
                id(was, n),
                id(was, n),
                was.variantOf(),
                buy(dice),
                was.socket(),
                heat,
                n == 0 ? was.performance() : dice.oneOf(List.of(40, 60)),
                was.electric());
    }

    private GraphicsCard wet(GraphicsCard was) {
        Block.Flow flow = new Block.Flow(
                List.of(new Block.LossPoint(1, 1), new Block.LossPoint(4, 12)), 0.08, Radiator.Metal.COPPER, 20);
        return new GraphicsCard(
                "card-w",
                "card-w",
                was.variantOf(),
                buy(dice),
                GraphicsCard.Cooling.BLOCK,
                was.body(),
                new GraphicsCard.Power(
                        80,
                        dice.oneOf(List.of(60, 90)),
                        was.power().eightPinPlugs(),
                        was.power().sixteenPinPlugs(),
                        Optional.of(flow)),
                was.performance(),
                was.electric(),
                was.ports(),
                was.massG());
    }

    void tubesAndCoolants() {
        for (String id : List.of("tube-a", "tube-b")) {
            Purchase buy = new Purchase(dice.oneOf(List.of(110, 450, 900)), dice.between(1, 6));
            all.add(new Tube(
                    id, id, Optional.empty(), buy, Tube.Kind.SOFT, Dice.hmm(1000), Dice.hmm(1300), Dice.hmm(4000)));
        }
        for (String id : List.of("coolant-a", "coolant-b")) {
            Purchase buy = new Purchase(dice.oneOf(List.of(990, 1500)), dice.between(1, 4));
            boolean glycol = dice.chance(30);
            all.add(new Coolant(
                    id,
                    id,
                    Optional.empty(),
                    buy,
                    glycol ? Coolant.BaseLiquid.PROPYLENE_GLYCOL : Coolant.BaseLiquid.WATER,
                    glycol ? Optional.of(30.0) : Optional.empty(),
                    Optional.empty(),
                    true,
                    12));
        }
    }
}

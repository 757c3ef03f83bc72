package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
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
    private final List<Part> all = new ArrayList<>();
    private final int many;

    /** Whether one port of each radiator is in the middle: there, unknown and known look alike. */
    private final boolean middlePorts;

    /** Parts for so many mounts: with three, fewer of a kind, as every combination is walked. */
    RankParts(Dice dice, int mounts) {
        this.dice = dice;
        this.many = mounts < 3 ? 2 : 1;
        this.middlePorts = dice.chance(25);
    }

    /** Coarse prices, so that builds tie. */
    static Purchase buy(Dice dice) {
        return new Purchase(dice.between(2, 12) * 500L, dice.oneOf(List.of(1, 2, 2, 3, 5, 7)));
    }

    static LoopWish loop(Dice dice) {
        Choice any = new Choice(List.of(), Optional.empty());
        Choice tube = dice.chance(20) ? new Choice(List.of("tube-b"), Optional.empty()) : any;
        return new LoopWish(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                tube,
                dice.oneOf(List.of(2.0, 1.1, 1.7)),
                any,
                dice.oneOf(List.of(1.0, 1.3)),
                Optional.empty());
    }

    List<Part> all() {
        return all;
    }

    void offer(Part part) {
        if (part instanceof Radiator radiator) {
            repeat(2, n -> all.add(radiator(radiator, n)));
        } else if (part instanceof Fan fan) {
            repeat(many, n -> all.add(fan(fan, n)));
        } else if (part instanceof Pump pump) {
            repeat(many, n -> all.add(pump(pump, n)));
        } else if (part instanceof Supply s) {
            all.add(new Supply(
                    s.id(), s.id(), s.variantOf(), buy(dice), s.form(), s.body(), s.plugRoomMm(), s.output()));
        } else if (part instanceof Processor p) {
            all.add(processor(p, 0));
            if (dice.chance(20)) {
                all.add(processor(p, 1));
            }
        } else if (part instanceof GraphicsCard card) {
            all.add(card);
            if (dice.chance(20)) {
                all.add(wet(card));
            }
        } else if (part instanceof Cover c) {
            Purchase buy = new Purchase(dice.between(1, 9) * 500L, dice.oneOf(List.of(2, 6, 14)));
            all.add(new Cover(c.id(), c.id(), c.variantOf(), buy, c.body(), c.skin(), c.fixing()));
        } else {
            all.add(part);
        }
    }

    private void repeat(int most, java.util.function.IntConsumer each) {
        int times = dice.between(1, most);
        for (int n = 0; n < times; n++) {
            each.accept(n);
        }
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
                2000, dice.oneOf(List.of(20, 35, 60)), List.copyOf(curve), dice.oneOf(List.of(15, 25, 25, 33)));
        return new Fan(id(was, n), id(was, n), was.variantOf(), buy(dice), was.frame(), air, was.electric());
    }

    private Pump pump(Pump was, int n) {
        Pump.Electric electric = new Pump.Electric(
                15, dice.oneOf(List.of(4, 8, 8, 15)), dice.oneOf(List.of(20, 80)), dice.oneOf(List.of(20, 30, 36)));
        return new Pump(
                id(was, n), id(was, n), was.variantOf(), buy(dice), was.kind(), was.body(), was.water(), electric);
    }

    private Processor processor(Processor was, int n) {
        Processor.Heat heat = new Processor.Heat(60, dice.oneOf(List.of(40, 80, 100)), 1);
        return new Processor(
                id(was, n),
                id(was, n),
                was.variantOf(),
                buy(dice),
                was.socket(),
                heat,
                n == 0 ? was.performance() : dice.oneOf(List.of(40, 60)));
    }

    private GraphicsCard wet(GraphicsCard was) {
        return new GraphicsCard(
                "card-w",
                "card-w",
                was.variantOf(),
                buy(dice),
                GraphicsCard.Cooling.BLOCK,
                was.body(),
                was.power(),
                was.performance());
    }

    void tubesAndCoolants() {
        for (String id : List.of("tube-a", "tube-b")) {
            Purchase buy = new Purchase(dice.oneOf(List.of(110, 450, 900)), dice.between(1, 6));
            all.add(new Tube(
                    id, id, Optional.empty(), buy, Tube.Kind.SOFT, Dice.hmm(1000), Dice.hmm(1300), Dice.hmm(4000)));
        }
        for (String id : List.of("coolant-a", "coolant-b")) {
            Purchase buy = new Purchase(dice.oneOf(List.of(990, 1500)), dice.between(1, 4));
            all.add(new Coolant(
                    id,
                    id,
                    Optional.empty(),
                    buy,
                    Coolant.BaseLiquid.WATER,
                    Optional.empty(),
                    Optional.empty(),
                    true,
                    12));
        }
    }
}

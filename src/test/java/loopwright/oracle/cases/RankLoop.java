package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.Choice;
import loopwright.catalog.brief.LoopWish;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Supply;
import loopwright.catalog.part.Tube;
import loopwright.catalog.part.TubeFitting;
import loopwright.quantity.Dimension;

/** What a loop is made of besides: fittings good and bad, now and then aluminium, and how loud supplies are. */
final class RankLoop {
    private static final int FITTINGS_PERCENT = 75;
    private static final List<TubeFitting.Wetted> WETTED = List.of(TubeFitting.Wetted.values());

    private final SplittableRandom random;
    private final boolean aluminiumBlock;
    private final List<TubeFitting> fittings = new ArrayList<>();

    RankLoop(long seed) {
        random = new SplittableRandom(seed * 31_337 + 3);
        aluminiumBlock = chance(7);
        if (chance(FITTINGS_PERCENT)) {
            draw();
        }
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private void draw() {
        for (int i = random.nextInt(1, 5); i > 0; i--) {
            fittings.add(fitting("straight-" + i, TubeFitting.Kind.STRAIGHT));
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            fittings.add(fitting("elbow-" + i, TubeFitting.Kind.ELBOW_90));
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            fittings.add(fitting("drain-" + i, TubeFitting.Kind.DRAIN));
        }
        if (chance(30)) {
            fittings.add(fitting("flat-elbow", TubeFitting.Kind.ELBOW_45));
        }
    }

    private TubeFitting fitting(String id, TubeFitting.Kind kind) {
        boolean tube = kind == TubeFitting.Kind.STRAIGHT;
        int bore = chance(80) ? 1000 : 1001;
        int outside = oneOf(List.of(1300, 1300, 1300, 1299, 1600));
        return new TubeFitting(
                id,
                id,
                Optional.empty(),
                new Purchase(oneOf(List.of(100L, 250L, 250L, 500L, 990L)), oneOf(List.of(1, 2, 4, 9))),
                kind,
                tube ? Optional.of(Dimension.ofHmm(bore)) : Optional.empty(),
                tube ? Optional.of(Dimension.ofHmm(outside)) : Optional.empty(),
                Dimension.ofHmm(1500),
                Dimension.ofHmm(900),
                wetted(kind),
                Optional.empty());
    }

    private TubeFitting.Wetted wetted(TubeFitting.Kind kind) {
        if (kind == TubeFitting.Kind.ELBOW_90 && chance(40)) {
            return TubeFitting.Wetted.ALUMINIUM;
        }
        return chance(55) ? TubeFitting.Wetted.BRASS : oneOf(WETTED);
    }

    /** Puts fittings among the parts, and changes those that are there. */
    void into(Map<String, Part> all) {
        for (TubeFitting fitting : fittings) {
            all.put(fitting.id(), fitting);
        }
        all.replaceAll((id, part) -> changed(part));
    }

    private Part changed(Part part) {
        if (part instanceof Radiator r && chance(aluminiumBlock ? 75 : 9)) {
            return new Radiator(
                    r.id(),
                    r.title(),
                    r.variantOf(),
                    r.buy(),
                    r.pattern(),
                    r.body(),
                    new Radiator.Ports(r.ports().at(), Radiator.Metal.ALUMINIUM),
                    r.core());
        } else if (part instanceof Block b && aluminiumBlock) {
            return new Block(
                    b.id(),
                    b.title(),
                    b.variantOf(),
                    b.buy(),
                    b.sockets(),
                    b.body(),
                    b.portRoomMm(),
                    aluminium(b.flow()),
                    b.ports(),
                    b.massG());
        } else if (part instanceof GraphicsCard c
                && c.power().block().isPresent()
                && chance(aluminiumBlock ? 60 : 12)) {
            return card(c, aluminium(c.power().block().get()));
        } else if (part instanceof GraphicsCard c && c.cooling() == GraphicsCard.Cooling.AIR && chance(10)) {
            // a sheet that tells of a block though the card is cooled by air: nothing of it is wetted
            Block.Flow flow = new Block.Flow(
                    List.of(new Block.LossPoint(1, 1), new Block.LossPoint(4, 12)), 0.08, Radiator.Metal.ALUMINIUM, 20);
            return card(c, flow);
        } else if (part instanceof Tube t && chance(20)) {
            return new Tube(
                    t.id(),
                    t.title(),
                    t.variantOf(),
                    t.buy(),
                    t.kind(),
                    t.boreMm(),
                    Dimension.ofHmm(1600),
                    t.bendRadiusMinMm());
        } else if (part instanceof Supply s) {
            return supply(s);
        }
        return part;
    }

    private static GraphicsCard card(GraphicsCard c, Block.Flow flow) {
        GraphicsCard.Power p = c.power();
        return new GraphicsCard(
                c.id(),
                c.title(),
                c.variantOf(),
                c.buy(),
                c.cooling(),
                c.body(),
                new GraphicsCard.Power(
                        p.workW(), p.worstW(), p.eightPinPlugs(), p.sixteenPinPlugs(), Optional.of(flow)),
                c.performance(),
                c.electric(),
                c.ports(),
                c.massG());
    }

    private static Block.Flow aluminium(Block.Flow was) {
        return new Block.Flow(was.loss(), was.resistanceKPerW(), Radiator.Metal.ALUMINIUM, was.coolantML());
    }

    private Supply supply(Supply s) {
        double loudest = oneOf(List.of(14.0, 24.0, 30.0, 37.0));
        List<Supply.NoisePoint> points = new ArrayList<>();
        if (chance(60)) {
            points.add(new Supply.NoisePoint(oneOf(List.of(0.0, 20.0, 60.0)), oneOf(List.of(0.0, 12.0))));
            if (chance(70)) {
                points.add(new Supply.NoisePoint(oneOf(List.of(61.0, 70.0, 75.5)), oneOf(List.of(12.0, 18.5))));
            }
            points.add(new Supply.NoisePoint(oneOf(List.of(80.0, 90.0, 100.0)), loudest));
        }
        Supply.Output o = s.output();
        return new Supply(
                s.id(),
                s.title(),
                s.variantOf(),
                s.buy(),
                s.form(),
                s.body(),
                s.plugRoomMm(),
                new Supply.Output(
                        o.ratedW(),
                        o.processorPlugs(),
                        o.cardEightPinPlugs(),
                        o.cardSixteenPinPlugs(),
                        o.sataPlugs(),
                        loudest,
                        o.efficiency()),
                s.rails(),
                s.cables(),
                List.copyOf(points),
                s.massG());
    }

    /** The same brief, perhaps with a choice of fittings. */
    Brief wished(Brief was) {
        if (fittings.isEmpty() || !chance(40)) {
            return was;
        }
        List<String> some =
                fittings.stream().filter(f -> chance(60)).map(TubeFitting::id).toList();
        LoopWish l = was.loop();
        LoopWish loop = new LoopWish(
                l.radiators(),
                l.fans(),
                l.pumps(),
                l.reservoirs(),
                l.tube(),
                l.tubeM(),
                l.coolant(),
                l.coolantL(),
                l.run(),
                Optional.of(new Choice(some, Optional.empty())));
        return new Brief(
                was.id(), was.title(), was.client(), was.chassis(), was.parts(), loop, was.limits(), was.terms());
    }
}

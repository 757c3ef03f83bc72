package loopwright.oracle.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.PracticeElectric;

/**
 * Gives the parts of a drawn case electrics: one rule is about to decide, with limits a milliwatt or a plug to this or that side
 * of what is asked, and the others mostly leave room.
 */
final class CaseElectric {

    /** The rule that is about to decide. */
    enum Hot {
        NONE,
        TWELVE_VOLT,
        LOW_RAILS,
        SURGE,
        SURGE_RESERVE,
        PROCESSOR_PLUGS,
        BOARD_PLUGS,
        CARD_PLUGS,
        CODING,
        CABLES
    }

    private static final List<Hot> HOT = List.of(Hot.values());

    private final SplittableRandom random;
    private final Hot hot;

    CaseElectric(long seed) {
        random = new SplittableRandom(seed * 52_711 + 11);
        hot = HOT.get(random.nextInt(10) == 0 ? 0 : random.nextInt(1, HOT.size()));
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T oneOf(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    /** The same catalogue with electrics. */
    Catalog of(Catalog was, Brief brief) {
        PracticeElectric usual = usual();
        TreeMap<String, Part> parts = new TreeMap<>(was.parts());
        was.all(Drive.class).forEach(d -> parts.put(d.id(), drive(d)));
        was.all(Processor.class).forEach(p -> parts.put(p.id(), processor(p)));
        was.all(Board.class).forEach(b -> parts.put(b.id(), board(b)));
        was.all(GraphicsCard.class).forEach(c -> parts.put(c.id(), card(c)));
        Practice practice = was.practice().withElectric(Optional.of(usual));
        Catalog asking = new Catalog(was.version(), was.currency(), parts, was.standards(), practice);
        CaseLoad load = CaseLoad.of(asking, brief);
        List<Supply> supplies = was.all(Supply.class);
        int spared = supplies.size() > 1 && chance(60) ? random.nextInt(supplies.size()) : -1;
        for (int i = 0; i < supplies.size(); i++) {
            CaseSupply supply = new CaseSupply(random, i == spared ? Hot.NONE : hot, load);
            parts.put(supplies.get(i).id(), supply.of(supplies.get(i)));
        }
        return new Catalog(was.version(), was.currency(), parts, was.standards(), practice);
    }

    private PracticeElectric usual() {
        PracticeElectric.Draw draw = new PracticeElectric.Draw(
                oneOf(List.of(0.0, 5.0, 10.0005, 30.0)),
                15,
                oneOf(List.of(150, 200)),
                oneOf(List.of(100, 150)),
                oneOf(hot == Hot.SURGE_RESERVE ? List.of(100.0, 150.0) : List.of(0.0, 50.0)));
        double own = oneOf(hot == Hot.CABLES ? List.of(100.0, 149.9995, 150.0) : List.of(100.0, 225.0));
        return new PracticeElectric(
                draw, new PracticeElectric.Plugs(own, 235, 8), new PracticeElectric.Headers(1, 80, 1.5, 60));
    }

    private Drive drive(Drive d) {
        Optional<Drive.Electric> electric = chance(hot == Hot.LOW_RAILS ? 90 : 50)
                ? Optional.of(new Drive.Electric(
                        0.5, 6, oneOf(hot == Hot.LOW_RAILS ? List.of(1.5, 5.0, 5.0) : List.of(0.0, 1.0, 1.5, 5.0))))
                : Optional.empty();
        return new Drive(
                d.id(),
                d.title(),
                d.variantOf(),
                d.buy(),
                d.form(),
                d.body(),
                d.plugRoomMm(),
                d.heatW(),
                electric,
                d.screws(),
                d.massG());
    }

    private Processor processor(Processor p) {
        Processor.Heat was = p.heat();
        int plugs = hot == Hot.BOARD_PLUGS || hot == Hot.PROCESSOR_PLUGS ? 2 : 1;
        double worst = chance(30) ? was.worstW() + 0.0005 : was.worstW();
        Optional<Processor.Electric> electric = chance(50)
                ? Optional.of(new Processor.Electric(10, oneOf(List.of(85.0, 120.0, 160.0005))))
                : Optional.empty();
        Processor.Heat heat = new Processor.Heat(was.workW(), worst, plugs);
        return new Processor(p.id(), p.title(), p.variantOf(), p.buy(), p.socket(), heat, p.performance(), electric);
    }

    private Board board(Board b) {
        Board.Electric e = b.electric();
        int plugs = hot == Hot.PROCESSOR_PLUGS ? 2 : hot == Hot.BOARD_PLUGS && chance(60) ? 2 : 1;
        return new Board(
                b.id(),
                b.title(),
                b.variantOf(),
                b.buy(),
                b.form(),
                b.sockets(),
                b.zones(),
                new Board.Electric(e.heatW(), plugs, e.sataPorts(), e.m2Sockets(), e.fanHeaders()),
                b.headers(),
                b.massG());
    }

    private GraphicsCard card(GraphicsCard c) {
        GraphicsCard.Power was = c.power();
        boolean sixteen = hot == Hot.CODING || chance(15);
        int eight = hot == Hot.CABLES ? 2 : was.eightPinPlugs();
        GraphicsCard.Power power =
                new GraphicsCard.Power(was.workW(), was.worstW(), eight, sixteen ? 1 : 0, was.block());
        int six = hot == Hot.CARD_PLUGS || chance(hot == Hot.CABLES ? 70 : 20) ? 1 : 0;
        Optional<GraphicsCard.Electric> electric = six > 0 || hot == Hot.CODING || chance(50)
                ? Optional.of(new GraphicsCard.Electric(
                        10,
                        six,
                        chance(50) ? Optional.of(oneOf(List.of(160, 180))) : Optional.empty(),
                        chance(hot == Hot.CODING ? 85 : 20) ? Optional.of(300) : Optional.empty()))
                : Optional.empty();
        return new GraphicsCard(
                c.id(),
                c.title(),
                c.variantOf(),
                c.buy(),
                c.cooling(),
                c.body(),
                power,
                c.performance(),
                electric,
                c.ports(),
                c.massG());
    }

    /** Drawn parts that a catalogue has besides get electrics too; what they are asked may be anything near. */
    List<Part> besides(List<Part> parts, Catalog catalog, Brief brief) {
        CaseLoad load = CaseLoad.of(catalog, brief);
        List<Part> out = new ArrayList<>();
        for (Part part : parts) {
            if (part instanceof Supply s && chance(60)) {
                out.add(new CaseSupply(random, hot, load).of(s));
            } else if (part instanceof Drive d) {
                out.add(drive(d));
            } else if (part instanceof GraphicsCard c && chance(60)) {
                out.add(card(c));
            } else if (part instanceof Processor p && chance(60)) {
                out.add(processor(p));
            } else {
                out.add(part);
            }
        }
        return out;
    }

    /**
     * What the first parts of each kind ask for, mW; what a surge asks, in hundredths of mW.
     *
     * @param eightPin plugs, 6-pin ones among them
     */
    record CaseLoad(
            long wholeMW, long lowMW, long surge, long reserveMW, int processorPlugs, int eightPin, int sixteenPin) {

        static CaseLoad of(Catalog catalog, Brief brief) {
            PracticeElectric.Draw draw = catalog.practice().plannedElectric().draw();
            Processor processor = catalog.all(Processor.class).get(0);
            GraphicsCard card = catalog.all(GraphicsCard.class).get(0);
            long cpu = mW(processor.heat().worstW());
            long gpu = mW(card.power().worstW());
            double misc = catalog.practice().heat().miscHeatW();
            long rest = mW(catalog.all(Board.class).get(0).electric().heatW())
                    + mW(catalog.all(Pump.class).get(0).electric().powerW())
                    + mW(misc);
            long low = mW(Math.min(misc, draw.miscLowW()));
            for (String id : brief.parts().drives()) {
                Drive d = catalog.part(Drive.class, id);
                rest += mW(d.heatW());
                low += d.electric().isEmpty()
                        ? 0
                        : mW(Math.min(d.heatW(), d.electric().get().lowW()));
            }
            long burst =
                    card.electric().flatMap(GraphicsCard.Electric::burstPercent).orElse(draw.cardBurstPercent());
            long peak = processor.electric().map(e -> 100 * mW(e.peakW())).orElse(cpu * draw.processorPeakPercent());
            int six = card.electric().map(GraphicsCard.Electric::sixPinPlugs).orElse(0);
            return new CaseLoad(
                    cpu + gpu + rest,
                    low,
                    gpu * burst + peak + 100 * rest,
                    mW(draw.oldSupplyReserveW()),
                    processor.heat().processorPlugs(),
                    card.power().eightPinPlugs() + six,
                    card.power().sixteenPinPlugs());
        }

        private static long mW(double watts) {
            return (long) Math.floor(watts * 1000 + 0.5);
        }
    }
}

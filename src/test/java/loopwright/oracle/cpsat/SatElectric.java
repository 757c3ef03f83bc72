package loopwright.oracle.cpsat;

import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToLongFunction;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.PracticeElectric;

/** Electrics as sums over literals, and pairs of parts that must not be chosen together. Milliwatts. */
final class SatElectric {
    private final SatFacts facts;
    private final Catalog catalog;
    private final PracticeElectric usual;
    private final long headroom;
    private final List<Drive> drives;

    SatElectric(SatFacts facts, Catalog catalog, Brief brief, List<Drive> drives) {
        this.facts = facts;
        this.catalog = catalog;
        this.usual = catalog.practice().plannedElectric();
        this.headroom = brief.terms().supplyHeadroomPercent();
        this.drives = drives;
    }

    /** A literal, and what it adds to a sum. */
    private record Term(Literal on, long milliwatts) {}

    void post(
            Map<Board, Literal> boards,
            Map<Processor, Literal> processors,
            Map<GraphicsCard, Literal> cards,
            Map<Pump, Literal> pumps,
            Map<Supply, Literal> supplies) {
        boards.forEach((b, on) -> never(
                on, processors, p -> p.heat().processorPlugs() > b.electric().processorPlugs()));
        List<Term> others = new ArrayList<>();
        others.addAll(terms(boards, b -> milliwatts(b.electric().heatW())));
        others.addAll(terms(pumps, p -> milliwatts(p.electric().powerW())));
        long misc = milliwatts(catalog.practice().heat().miscHeatW());
        long low = Math.min(misc, milliwatts(usual.draw().miscLowW()));
        others.add(new Term(facts.yes(), misc));
        for (Drive d : drives) {
            long heat = milliwatts(d.heatW());
            others.add(new Term(facts.yes(), heat));
            if (d.electric().isPresent()) {
                low += Math.min(heat, milliwatts(d.electric().get().lowW()));
            }
        }
        List<Term> worst = new ArrayList<>(others);
        worst.addAll(terms(processors, p -> milliwatts(p.heat().worstW())));
        worst.addAll(terms(cards, c -> milliwatts(c.power().worstW())));
        List<Term> surge = new ArrayList<>();
        others.forEach(o -> surge.add(new Term(o.on(), 100 * o.milliwatts())));
        surge.addAll(terms(processors, this::peak));
        surge.addAll(terms(cards, c -> milliwatts(c.power().worstW()) * burst(c)));
        for (Map.Entry<Supply, Literal> one : supplies.entrySet()) {
            Supply s = one.getKey();
            Literal on = one.getValue();
            plugs(s, on, processors, cards);
            long rated = milliwatts(s.output().ratedW());
            atMost(on, worst, 100 + headroom, 100 * rated);
            if (s.rails().isEmpty()) {
                continue;
            }
            Supply.Rails rails = s.rails().get();
            atMost(on, worst, 1, twelveVolt(rails) + low);
            if (milliwatts(rails.lowW()) < low) {
                facts.rule(List.of(on), List.of());
            }
            if (rails.surgePercent().isPresent()) {
                atMost(on, surge, 1, rated * rails.surgePercent().get());
            } else {
                atMost(on, worst, 1, rated - milliwatts(usual.draw().oldSupplyReserveW()));
            }
        }
    }

    private void plugs(Supply s, Literal on, Map<Processor, Literal> processors, Map<GraphicsCard, Literal> cards) {
        if (drives.stream().filter(d -> d.form() != Drive.DriveForm.M2).count()
                > s.output().sataPlugs()) {
            facts.rule(List.of(on), List.of());
        }
        never(on, processors, p -> p.heat().processorPlugs() > s.output().processorPlugs());
        never(
                on,
                cards,
                c -> c.power().eightPinPlugs()
                                        + c.electric().map(e -> e.sixPinPlugs()).orElse(0)
                                > s.output().cardEightPinPlugs()
                        || c.power().sixteenPinPlugs() > s.output().cardSixteenPinPlugs());
        s.rails()
                .flatMap(Supply.Rails::sixteenPinW)
                .ifPresent(coded -> never(
                        on,
                        cards,
                        c -> c.power().sixteenPinPlugs() >= 1
                                && c.electric()
                                        .flatMap(GraphicsCard.Electric::sixteenPinW)
                                        .filter(w -> w > coded)
                                        .isPresent()));
        List<Plug> cables = s.cables().stream().map(Supply.Cable::plug).toList();
        long eights = cables.stream().filter(p -> p == Plug.CARD_8).count();
        if (!cables.isEmpty()) {
            long own = milliwatts(usual.plugs().cardOwnCableW());
            never(
                    on,
                    cards,
                    c -> c.power().eightPinPlugs() > eights
                            && milliwatts(c.power().worstW()) > own);
        }
    }

    private long peak(Processor p) {
        return p.electric()
                .map(e -> milliwatts(e.peakW()) * 100)
                .orElseGet(() -> milliwatts(p.heat().worstW()) * usual.draw().processorPeakPercent());
    }

    private long burst(GraphicsCard c) {
        return c.electric()
                .flatMap(GraphicsCard.Electric::burstPercent)
                .orElse(usual.draw().cardBurstPercent());
    }

    private static <P> List<Term> terms(Map<P, Literal> role, ToLongFunction<P> milliwatts) {
        List<Term> out = new ArrayList<>();
        role.forEach((part, on) -> out.add(new Term(on, milliwatts.applyAsLong(part))));
        return out;
    }

    private void atMost(Literal when, List<Term> sum, long factor, long most) {
        LinearExprBuilder all = LinearExpr.newBuilder();
        sum.forEach(t -> all.addTerm(t.on(), factor * t.milliwatts()));
        facts.model.addLessOrEqual(all, most).onlyEnforceIf(when);
    }

    private <P> void never(Literal with, Map<P, Literal> role, Predicate<P> wrong) {
        role.forEach((part, on) -> {
            if (wrong.test(part)) {
                facts.rule(List.of(with, on), List.of());
            }
        });
    }

    private static long twelveVolt(Supply.Rails rails) {
        return new BigDecimal(Double.toString(rails.twelveVoltA()))
                .multiply(BigDecimal.valueOf(12_000))
                .add(BigDecimal.valueOf(5, 1))
                .toBigInteger()
                .longValueExact();
    }

    private static long milliwatts(double watts) {
        return Math.floorDiv(Math.round(watts * 10_000) + 5, 10);
    }
}

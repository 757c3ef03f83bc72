package loopwright.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import loopwright.catalog.Catalog;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Radiator.Metal;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.oracle.OracleCase;
import loopwright.oracle.cases.RankCases;
import org.junit.jupiter.api.Test;

/**
 * Ranking with parts of both metals against ranking with the parts of each metal by themselves: every build has a block and
 * a radiator, so every build that does not mix is in exactly one of the two, and no build that mixes is in either.
 */
class RankMetalsTest {

    private static final int SEEDS = Integer.getInteger("metal.seeds", 40);

    /** Price, cents, and coolant over room, hundredths of a kelvin. */
    private record Figures(long cents, int centiK) implements Comparable<Figures> {
        @Override
        public int compareTo(Figures other) {
            return cents != other.cents ? Long.compare(cents, other.cents) : Integer.compare(centiK, other.centiK);
        }

        boolean beats(Figures other) {
            return cents <= other.cents && centiK <= other.centiK && !equals(other);
        }
    }

    @Test
    void whatIsRankedIsWhatEachMetalGivesByItself() {
        List<String> differences = new ArrayList<>();
        int both = 0;
        int refused = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            OracleCase question = RankCases.generate(seed);
            SortedMap<String, Part> mixed = withMetals(question.catalog(), new Random(seed));
            SortedMap<Figures, Integer> copper = unbeaten(question, only(mixed, Metal.COPPER));
            SortedMap<Figures, Integer> aluminium = unbeaten(question, only(mixed, Metal.ALUMINIUM));
            SortedMap<Figures, Integer> expected = merged(copper, aluminium);
            SortedMap<Figures, Integer> found = unbeaten(question, mixed);
            both += copper.isEmpty() || aluminium.isEmpty() ? 0 : 1;
            refused += found.equals(unbeaten(question, allOf(mixed))) ? 0 : 1;
            if (!found.equals(expected)) {
                differences.add("seed " + seed + ": " + found + " but by metal " + expected);
            }
        }
        assertThat(differences).as("differences on seeds 0 to %s", SEEDS - 1).isEmpty();
        assertThat(both).as("cases with builds of either metal").isPositive();
        assertThat(refused)
                .as("cases in which a mixed build would have counted")
                .isPositive();
    }

    private static SortedMap<Figures, Integer> merged(
            SortedMap<Figures, Integer> one, SortedMap<Figures, Integer> other) {
        SortedMap<Figures, Integer> all = new TreeMap<>(one);
        other.forEach((figures, equal) -> all.merge(figures, equal, Integer::sum));
        SortedMap<Figures, Integer> out = new TreeMap<>(all);
        out.keySet().removeIf(f -> all.keySet().stream().anyMatch(o -> o.beats(f)));
        return out;
    }

    private static SortedMap<Figures, Integer> unbeaten(OracleCase question, SortedMap<String, Part> parts) {
        Catalog was = question.catalog();
        Catalog catalog = new Catalog("in code", was.currency(), parts, was.standards(), was.practice());
        FitCase fitCase = new FitCase(catalog, question.chassis(), question.brief());
        BriefLimits limits = question.brief().limits();
        double altitudeM =
                limits.heat().flatMap(BriefLimits.HeatLimits::altitudeM).orElse(0.0);
        MachineModel model = new MachineModel(catalog.practice(), new Machine.Site(limits.roomC(), altitudeM));
        SortedMap<Figures, Integer> out = new TreeMap<>();
        if (fitCase.shapes().radiators().isEmpty()) {
            return out;
        }
        for (RankResult.Ranked ranked : new RankSearch(fitCase, FitWish.ALL, model, () -> false)
                .run(Order.COST, 1)
                .unbeaten()) {
            Build.Outcome outcome = ranked.build().outcome();
            out.put(new Figures(outcome.priceCents(), outcome.coolantOverRoomCentiK()), ranked.equal());
        }
        return out;
    }

    private static SortedMap<String, Part> only(SortedMap<String, Part> parts, Metal metal) {
        Predicate<Part> fits = p -> metalOf(p).map(m -> m == metal).orElse(true);
        SortedMap<String, Part> out = new TreeMap<>();
        parts.forEach((id, part) -> {
            if (fits.test(part)) {
                out.put(id, part);
            }
        });
        return out;
    }

    /** The same parts, as if nothing were of aluminium. */
    private static SortedMap<String, Part> allOf(SortedMap<String, Part> parts) {
        SortedMap<String, Part> out = new TreeMap<>();
        parts.forEach((id, part) -> out.put(id, of(part, Metal.COPPER)));
        return out;
    }

    private static Part of(Part part, Metal metal) {
        if (part instanceof Radiator radiator) {
            return of(radiator, metal);
        }
        if (part instanceof Block block) {
            return of(block, block.id(), block.buy().priceCents(), metal);
        }
        return part instanceof GraphicsCard card ? of(card, metal) : part;
    }

    private static Optional<Metal> metalOf(Part part) {
        if (part instanceof Radiator radiator) {
            return Optional.of(radiator.ports().metal());
        }
        if (part instanceof Block block) {
            return Optional.of(block.flow().metal());
        }
        return part instanceof GraphicsCard card && card.cooling() == GraphicsCard.Cooling.BLOCK
                ? card.power().block().map(Block.Flow::metal)
                : Optional.empty();
    }

    /** The same parts of drawn metals, and for each block and radiator a twin of the other metal that costs something else. */
    private static SortedMap<String, Part> withMetals(Catalog catalog, Random dice) {
        SortedMap<String, Part> out = new TreeMap<>();
        for (Part part : catalog.parts().values()) {
            Metal metal = dice.nextInt(5) < 3 ? Metal.COPPER : Metal.ALUMINIUM;
            Metal other = metal == Metal.COPPER ? Metal.ALUMINIUM : Metal.COPPER;
            if (part instanceof Radiator r) {
                out.put(part.id(), of(r, metal));
                String twin = r.id() + "-t";
                out.put(twin, of(r, twin, Math.max(1, r.buy().priceCents() + dice.nextInt(900) - 450), other));
            } else if (part instanceof Block b) {
                out.put(part.id(), of(b, b.id(), b.buy().priceCents(), metal));
                String twin = b.id() + "-t";
                out.put(twin, of(b, twin, Math.max(1, b.buy().priceCents() + dice.nextInt(900) - 450), other));
            } else if (part instanceof GraphicsCard card && card.power().block().isPresent()) {
                out.put(part.id(), of(card, metal));
            } else {
                out.put(part.id(), part);
            }
        }
        return out;
    }

    private static Radiator of(Radiator r, Metal metal) {
        return of(r, r.id(), r.buy().priceCents(), metal);
    }

    private static Radiator of(Radiator r, String id, long cents, Metal metal) {
        return new Radiator(
                id,
                r.title(),
                r.variantOf(),
                new loopwright.catalog.basis.Purchase(cents, r.buy().leadDays()),
                r.pattern(),
                r.body(),
                new Radiator.Ports(r.ports().at(), metal),
                r.core());
    }

    private static Block of(Block b, String id, long cents, Metal metal) {
        return new Block(
                id,
                b.title(),
                b.variantOf(),
                new loopwright.catalog.basis.Purchase(cents, b.buy().leadDays()),
                b.sockets(),
                b.body(),
                b.portRoomMm(),
                of(b.flow(), metal));
    }

    private static Block.Flow of(Block.Flow flow, Metal metal) {
        return new Block.Flow(flow.loss(), flow.resistanceKPerW(), metal, flow.coolantML());
    }

    private static GraphicsCard of(GraphicsCard c, Metal metal) {
        GraphicsCard.Power power = new GraphicsCard.Power(
                c.power().workW(),
                c.power().worstW(),
                c.power().eightPinPlugs(),
                c.power().sixteenPinPlugs(),
                c.power().block().map(f -> of(f, metal)));
        return new GraphicsCard(
                c.id(), c.title(), c.variantOf(), c.buy(), c.cooling(), c.body(), power, c.performance());
    }
}

package loopwright.workshop.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.brief.OfferTerms;
import loopwright.catalog.brief.Terms;
import loopwright.catalog.standard.Practice;
import loopwright.catalog.standard.Workshop;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.oracle.OracleCase;
import loopwright.oracle.cases.RankCases;
import loopwright.rank.Bill;
import loopwright.rank.Order;
import loopwright.rank.RankResult;
import loopwright.rank.RankSearch;
import loopwright.workshop.schedule.WorkPlans;
import org.junit.jupiter.api.Test;

/** Bills and offers of seeded builds: to the cent what the ranking says, and every sum the sum of its lines. */
class BillTest {

    private static final int SEEDS = 60;

    private static final Workshop WORKSHOP =
            CatalogReader.read(Path.of("catalogs")).practice().workshop().orElseThrow();

    @Test
    void everySumAddsUp() {
        int builds = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            FitCase fitCase = fitCase(RankCases.generate(seed), dice);
            MachineModel model = new MachineModel(
                    fitCase.catalog().practice(),
                    new Machine.Site(fitCase.brief().limits().roomC(), 0));
            RankResult result = new RankSearch(fitCase, FitWish.ALL, model, () -> false).run(Order.COST, 20);
            for (RankResult.Ranked ranked : result.listed()) {
                String as = "seed " + seed + " build " + ranked.build().key();
                Bill bill = Bill.of(fitCase, ranked.build());
                assertThat(bill.priceCents())
                        .as(as)
                        .isEqualTo(ranked.build().outcome().priceCents());
                assertThat(WorkPlans.of(fitCase, ranked.build(), Set.of()).handsMin())
                        .as(as)
                        .isEqualTo(ranked.build().outcome().labourMin());
                addsUp(as, Quote.of(fitCase, ranked.build(), planned(bill, dice)));
                builds++;
            }
        }
        assertThat(builds).isGreaterThan(100);
    }

    /** The bill's lines, one of them dearer or not at all, as a plan may have it. */
    private static List<Bill.Bought> planned(Bill bill, SplittableRandom dice) {
        List<Bill.Bought> out = new java.util.ArrayList<>(bill.bought());
        Bill.Bought one = out.remove(dice.nextInt(out.size()));
        if (dice.nextBoolean()) {
            out.add(new Bill.Bought(
                    one.role(), one.part(), one.quantity(), one.unit(), one.cents() + dice.nextInt(5_000)));
        }
        return out;
    }

    private static void addsUp(String as, Quote quote) {
        Quote.Sums sums = quote.sums();
        long lines = quote.bought().stream().mapToLong(Bill.Bought::cents).sum()
                + quote.bill().materials().stream()
                        .mapToLong(Bill.Material::cents)
                        .sum()
                + quote.labour().lines().stream().mapToLong(Labour.Line::cents).sum()
                + quote.labour().spreadCents()
                + quote.outside().stream()
                        .mapToLong(OfferTerms.Outside::priceCents)
                        .sum()
                + quote.contingency().cents();
        assertThat(sums.netCents()).as(as).isEqualTo(lines);
        assertThat(quote.fromRank().stream().mapToLong(Quote.Step::cents).sum())
                .as(as)
                .isEqualTo(lines);
        assertThat(sums.grossCents()).as(as).isEqualTo(sums.netCents() + sums.taxCents());
        assertThat(sums.depositCents() + sums.balanceCents()).as(as).isEqualTo(sums.grossCents());
        assertThat(sums.depositCents()).as(as).isGreaterThanOrEqualTo(quote.boughtCents());
        assertThat(quote.labour().plannedCents()).as(as).isEqualTo(quote.bill().labourCents());
        assertThat(quote.labour().quotedMin())
                .as(as)
                .isGreaterThanOrEqualTo(quote.labour().plannedMin());
    }

    private static FitCase fitCase(OracleCase question, SplittableRandom dice) {
        Practice p = question.catalog().practice();
        Practice practice = p.withWorkshop(java.util.Optional.of(WORKSHOP));
        Catalog c = question.catalog();
        Catalog catalog = new Catalog(c.version(), c.currency(), c.parts(), c.standards(), practice);
        Brief b = question.brief();
        Terms t = b.terms();
        OfferTerms offer = new OfferTerms(
                dice.nextBoolean() ? java.util.Optional.of(dice.nextInt(2500) / 100.0) : java.util.Optional.empty(),
                java.util.Optional.of(25 + dice.nextInt(26)),
                java.util.Optional.empty(),
                dice.nextBoolean(),
                List.of(new OfferTerms.Outside("powder", dice.nextInt(20_000))));
        Terms terms = new Terms(
                t.currency(),
                t.rateCentsPerH(),
                t.contingencyPercent(),
                t.assemblyMin(),
                t.workHPerDay(),
                t.dutyStepPercent(),
                t.supplyHeadroomPercent(),
                java.util.Optional.of(offer));
        Brief brief = new Brief(b.id(), b.title(), b.client(), b.chassis(), b.parts(), b.loop(), b.limits(), terms);
        return new FitCase(catalog, question.chassis(), brief);
    }
}

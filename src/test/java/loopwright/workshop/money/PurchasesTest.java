package loopwright.workshop.money;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.RankAnswer;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.brief.Brief;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.loop.Steady;
import loopwright.plumbing.FittingBill;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.rank.Bill;
import loopwright.rank.Order;
import loopwright.rank.RankResult.Ranked;
import org.junit.jupiter.api.Test;

/** What is bought for every unbeaten build of a brief, against its plan; and the planned order of the loop in its physics. */
class PurchasesTest {

    private static final Catalog CATALOG = CatalogReader.read(Path.of("catalogs"));

    private static List<InspectAnswer> answers(String scenario, int most) {
        Brief brief = CatalogReader.readBrief(Path.of("scenarios/" + scenario + ".yaml"), CATALOG);
        FitCase fitCase = new FitCase(CATALOG, CATALOG.chassis(brief.chassis().get(0)), brief);
        RankAnswer ranking = new RankAnswer(
                fitCase, FitWish.ALL, new RankAnswer.RankWish(Order.COST, 1, Optional.empty()), Optional::empty);
        List<InspectAnswer> out = new ArrayList<>();
        for (Ranked one : ranking.result().unbeaten().stream().limit(most).toList()) {
            out.add(new InspectAnswer(new Inspection(fitCase, one)));
        }
        return out;
    }

    @Test
    void boughtAsPlanned() {
        int laid = 0;
        int blocked = 0;
        int leads = 0;
        List<InspectAnswer> all = new ArrayList<>(answers("slim-desk", 6));
        all.addAll(answers("tight-budget", 3));
        for (InspectAnswer answer : all) {
            LoopPlan plan = answer.plumbing().plan();
            List<Bill.Bought> rule = Bill.of(
                            answer.inspection().fitCase(), answer.inspection().build())
                    .bought();
            List<Bill.Bought> bought = Purchases.of(answer);
            assertThat(of(bought, "coolant").get(0).quantity().doubleValue() * 1000)
                    .isGreaterThanOrEqualTo(plan.materials().coolant().orderML());
            assertThat(of(bought, "coolant").get(0).quantity())
                    .isGreaterThanOrEqualTo(of(rule, "coolant").get(0).quantity());
            assertThat(of(bought, "tube").get(0).quantity())
                    .isGreaterThanOrEqualTo(of(rule, "tube").get(0).quantity());
            if (plan.isReachable()) {
                laid++;
                assertThat(of(bought, "tube").get(0).quantity())
                        .isGreaterThanOrEqualTo(BigDecimal.valueOf(plan.tubeHmm(), 5));
                assertThat(counts(of(bought, "fittings")))
                        .isEqualTo(plan.materials().bill().lines().stream()
                                .collect(Collectors.toMap(l -> l.fitting().id(), FittingBill.Line::count)));
            } else {
                blocked++;
                assertThat(counts(of(bought, "fittings"))).isEqualTo(counts(of(rule, "fittings")));
            }
            leads += of(bought, "lead").size();
            assertThat(without(bought)).isEqualTo(without(rule));
            assertThat(Quote.of(answer).boughtCents())
                    .isEqualTo(bought.stream().mapToLong(Bill.Bought::cents).sum());
        }
        assertThat(laid).isPositive();
        assertThat(blocked).isPositive();
        assertThat(leads).isPositive();
    }

    /** Coolant passes the parts as the runs are planned, tank and pump first; heat still balances. */
    @Test
    void physicsPassesPartsAsPlanned() {
        for (InspectAnswer answer : answers("tight-budget", 2)) {
            Steady planned = answer.plumbing().planned().orElseThrow();
            List<String> names = planned.stops().stream().map(Steady.Stop::name).toList();
            List<String> parts = answer.plumbing().plan().parts().stream()
                    .map(LoopPart::name)
                    .filter(names::contains)
                    .toList();
            assertThat(names.subList(1, names.size() - 1)).isEqualTo(parts);
            assertThat(planned.water().meanC())
                    .isBetween(
                            planned.stops().stream()
                                    .mapToDouble(Steady.Stop::outC)
                                    .min()
                                    .orElseThrow(),
                            planned.stops().stream()
                                    .mapToDouble(Steady.Stop::outC)
                                    .max()
                                    .orElseThrow());
        }
    }

    private static List<Bill.Bought> of(List<Bill.Bought> bought, String role) {
        return bought.stream().filter(b -> b.role().equals(role)).toList();
    }

    private static List<Bill.Bought> without(List<Bill.Bought> bought) {
        return bought.stream()
                .filter(b -> !List.of("coolant", "tube", "fittings", "lead").contains(b.role()))
                .toList();
    }

    private static Map<String, Integer> counts(List<Bill.Bought> bought) {
        Map<String, Integer> out = new TreeMap<>();
        bought.forEach(b -> out.put(b.part().id(), b.quantity().intValueExact()));
        return out;
    }
}

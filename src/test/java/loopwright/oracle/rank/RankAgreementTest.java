package loopwright.oracle.rank;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.LongStream;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.fit.FitWish;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.oracle.OracleCase;
import loopwright.oracle.cases.RankCases;
import loopwright.rank.Build;
import loopwright.rank.Order;
import loopwright.rank.RankResult;
import loopwright.rank.RankSearch;
import org.junit.jupiter.api.Test;

/** The production ranking against an enumeration that leaves nothing out and shares no code with it. */
class RankAgreementTest {

    /** Cases that are compared. */
    static final int SEEDS = Integer.getInteger("rank.seeds", 240);

    /** Lengths of list that are asked for, by turns. */
    private static final List<Integer> TOPS = List.of(1, 3, 1000);

    private static final List<By> ORDERS = List.of(By.values());

    static LongStream seeds() {
        return LongStream.range(0, SEEDS);
    }

    @Test
    void theSearchFindsWhatTheEnumerationFinds() {
        List<String> differences = new ArrayList<>();
        seeds().forEach(seed -> {
            OracleCase question = RankCases.generate(seed);
            compare(question, new BruteRank(RankFault.NONE).apply(question), differences);
        });
        assertThat(differences).as("differences on seeds 0 to %s", SEEDS - 1).isEmpty();
    }

    private static void compare(OracleCase question, RankAnswer truth, List<String> differences) {
        long seed = question.seed();
        By by = ORDERS.get((int) (seed % ORDERS.size()));
        int top = TOPS.get((int) (seed % TOPS.size()));
        RankResult result = production(question, by, top);
        SortedMap<RankAnswer.Point, Integer> unbeaten = unbeaten(result);
        if (!unbeaten.equals(truth.unbeaten())) {
            differences.add("seed " + seed + ": unbeaten " + unbeaten + " but enumerated " + truth.unbeaten());
        }
        SortedMap<String, BruteFigures.ListFigures> all = truth.best().getOrDefault(by, new TreeMap<>());
        List<BruteFigures.ListFigures> expected =
                all.values().stream().sorted().limit(top).toList();
        List<BruteFigures.ListFigures> listed =
                result.listed().stream().map(r -> figures(r.build(), by)).toList();
        if (!listed.equals(expected)) {
            differences.add("seed " + seed + ": " + top + " by " + by + " " + listed + " but enumerated " + expected);
        }
        for (RankResult.Ranked ranked : result.listed()) {
            BruteFigures.ListFigures best =
                    all.get(BruteKept.sameParts(ranked.build().layout().text()));
            if (!figures(ranked.build(), by).equals(best)) {
                differences.add("seed " + seed + ": by " + by + " "
                        + ranked.build().layout().text() + " " + figures(ranked.build(), by) + " but enumerated "
                        + best);
                return;
            }
        }
    }

    private static RankResult production(OracleCase question, By by, int top) {
        FitCase fitCase = new FitCase(question.catalog(), question.chassis(), question.brief());
        BriefLimits limits = question.brief().limits();
        double altitudeM =
                limits.heat().flatMap(BriefLimits.HeatLimits::altitudeM).orElse(0.0);
        MachineModel model =
                new MachineModel(question.catalog().practice(), new Machine.Site(limits.roomC(), altitudeM));
        return new RankSearch(fitCase, FitWish.ALL, model, () -> false).run(Order.valueOf(by.name()), top);
    }

    private static SortedMap<RankAnswer.Point, Integer> unbeaten(RankResult result) {
        SortedMap<RankAnswer.Point, Integer> out = new TreeMap<>();
        for (RankResult.Ranked ranked : result.unbeaten()) {
            Build.Outcome outcome = ranked.build().outcome();
            out.put(new RankAnswer.Point(outcome.priceCents(), outcome.coolantOverRoomCentiK()), ranked.equal());
        }
        return out;
    }

    private static BruteFigures.ListFigures figures(Build build, By by) {
        Build.Outcome o = build.outcome();
        return new BruteFigures(
                        o.priceCents(), o.coolantOverRoomCentiK(), o.sound().millionths(), o.labourMin(), o.days())
                .listed(by);
    }
}

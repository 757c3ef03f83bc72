package loopwright.power.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;
import loopwright.power.header.WiringTask.There;
import org.junit.jupiter.api.Test;

/**
 * The plan against an enumeration that puts each fan on a header by itself and each lead on each header, and shares no code with it.
 */
class WiringBruteForceTest {

    private static final long SEEDS = 400;

    /** Cost and count of leads; none where nothing goes. */
    private record Cheapest(long cents, int leads) {}

    @Test
    void agreesWithTryingEverything() {
        int found = 0;
        int none = 0;
        int bought = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            WiringTask task = task(new Random(seed));
            Optional<Cheapest> brute = brute(task);
            Optional<WiringPlan> plan = WiringSearch.find(task);
            assertThat(plan.map(p -> new Cheapest(p.cents(), p.leads().size())))
                    .as("seed %d", seed)
                    .isEqualTo(brute);
            assertThat(plan.isEmpty() || fed(task, plan.get()))
                    .as("seed %d", seed)
                    .isTrue();
            found += plan.isPresent() ? 1 : 0;
            none += plan.isPresent() ? 0 : 1;
            bought += plan.filter(p -> p.cents() > 0).isPresent() ? 1 : 0;
        }
        assertThat(List.of(found, none, bought)).allMatch(n -> n > 20);
    }

    private static WiringTask task(Random dice) {
        List<FanGroup> fans = new ArrayList<>();
        for (int i = 0; i < 1 + dice.nextInt(3); i++) {
            int start = 50 * (1 + dice.nextInt(9));
            fans.add(new FanGroup("g" + i, "f" + i, 1 + dice.nextInt(2), start / 2, start));
        }
        List<HeaderAt> headers = new ArrayList<>();
        for (int i = 0; i < 1 + dice.nextInt(3); i++) {
            headers.add(new HeaderAt("h" + i, dice.nextInt(3) == 0, 500 * (1 + dice.nextInt(4))));
        }
        List<Lead> leads = new ArrayList<>();
        for (int i = 0; i < dice.nextInt(4); i++) {
            boolean hub = dice.nextInt(3) == 0;
            leads.add(WiringSearchTest.lead(
                    "l" + i,
                    hub ? Lead.Kind.HUB : Lead.Kind.SPLITTER,
                    hub ? Plug.SATA : Plug.FAN_4,
                    2 + dice.nextInt(3),
                    dice.nextInt(2) * 1.0,
                    100L * (1 + dice.nextInt(3))));
        }
        PumpFeed.Way way = List.of(PumpFeed.Way.values()).get(dice.nextInt(3));
        Optional<PumpFeed> pump = dice.nextInt(2) == 0
                ? Optional.empty()
                : Optional.of(new PumpFeed("pump", way, true, 400 * (1 + dice.nextInt(4))));
        return new WiringTask(
                fans, pump, new There(headers, dice.nextInt(3), dice.nextInt(2)), leads, WiringSearchTest.LIMITS);
    }

    /** Every lead or none on every header, the pump on every header, every fan on every other header. */
    private static Optional<Cheapest> brute(WiringTask task) {
        List<Integer> starts = new ArrayList<>();
        task.fans().forEach(f -> {
            for (int i = 0; i < f.count(); i++) {
                starts.add(f.startMilliA());
            }
        });
        int headers = task.there().headers().size();
        int ways = task.leads().size() + 1;
        Optional<Cheapest> best = Optional.empty();
        for (int pumpAt = task.pump().isPresent() ? 0 : -1;
                pumpAt < (task.pump().isPresent() ? headers : 0);
                pumpAt++) {
            int sata = task.there().sata();
            if (pumpAt >= 0) {
                PumpFeed pump = task.pump().orElseThrow();
                int limit = task.there().headers().get(pumpAt).limitMilliA();
                boolean fed = switch (pump.way()) {
                    case HEADER -> pump.startMilliA() * 10 <= limit * 8;
                    case SATA -> sata-- >= 1 && pump.startMilliA() <= 4500;
                    case PERIPHERAL -> task.there().peripheral() >= 1 && pump.startMilliA() <= 8000;
                };
                if (!fed) {
                    continue;
                }
            }
            for (int code = 0; code < power(ways, headers); code++) {
                for (int put = 0; put < power(headers, starts.size()); put++) {
                    best = better(best, one(task, starts, pumpAt, sata, code, put));
                }
            }
        }
        return best;
    }

    private static Optional<Cheapest> better(Optional<Cheapest> one, Optional<Cheapest> other) {
        Comparator<Cheapest> order = Comparator.comparingLong(Cheapest::cents).thenComparingInt(Cheapest::leads);
        return Stream.of(one, other).flatMap(Optional::stream).min(order);
    }

    private static Optional<Cheapest> one(
            WiringTask task, List<Integer> starts, int pumpAt, int sata, int code, int put) {
        int headers = task.there().headers().size();
        int ways = task.leads().size() + 1;
        int[] fans = new int[headers];
        int[] sums = new int[headers];
        int digits = put;
        for (int start : starts) {
            fans[digits % headers]++;
            sums[digits % headers] += start;
            digits /= headers;
        }
        long cents = 0;
        int leads = 0;
        int hubs = 0;
        int kinds = code;
        for (int h = 0; h < headers; h++) {
            int kind = kinds % ways;
            kinds /= ways;
            if (h == pumpAt && (fans[h] > 0 || kind > 0)) {
                return Optional.empty();
            }
            double limit = task.there().headers().get(h).limitMilliA();
            int outlets = 1;
            if (kind > 0) {
                Lead lead = task.leads().get(kind - 1);
                boolean hub = lead.kind() == Lead.Kind.HUB;
                limit = Math.min(hub ? 4500 : limit, lead.limitA().orElse(99.0) * 1000);
                outlets = lead.outlets();
                cents += lead.buy().priceCents();
                leads++;
                hubs += hub ? 1 : 0;
            }
            if (fans[h] > outlets || sums[h] * 10L > Math.round(limit * 8)) {
                return Optional.empty();
            }
        }
        return hubs <= sata ? Optional.of(new Cheapest(cents, leads)) : Optional.empty();
    }

    private static int power(int base, int exponent) {
        int out = 1;
        for (int i = 0; i < exponent; i++) {
            out *= base;
        }
        return out;
    }

    /** Whether each fan hangs somewhere, on headers that are there once. */
    private static boolean fed(WiringTask task, WiringPlan plan) {
        for (int g = 0; g < task.fans().size(); g++) {
            int group = g;
            int hung = plan.branches().stream()
                    .mapToInt(b -> b.counts().get(group))
                    .sum();
            if (hung != task.fans().get(g).count()) {
                return false;
            }
        }
        List<HeaderAt> used = new ArrayList<>();
        plan.branches().forEach(b -> used.add(b.header()));
        plan.pump().ifPresent(p -> used.add(p.header()));
        return used.stream().distinct().count() == used.size()
                && task.there().headers().containsAll(used);
    }
}

package loopwright.plumbing.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loopwright.plumbing.order.OrderQuestion.Pair;
import loopwright.plumbing.order.OrderQuestion.Round;
import loopwright.plumbing.order.OrderQuestion.Stop;
import org.junit.jupiter.api.Test;

/** The cheapest way round against every permutation with every choice of ports. */
final class OrderSearchTest {

    @Test
    void isAsCheapAsEveryPermutationSays() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            OrderQuestion question = question(random, 3 + random.nextInt(4));
            Round best = new OrderSearch(question).best();
            assertThat(best.costHmm()).as("seed " + seed).isEqualTo(brute(question));
            assertThat(cost(question, best.sequence(), best.ports()))
                    .as("seed " + seed)
                    .isEqualTo(best.costHmm());
        }
    }

    @Test
    void sevenPartsToo() {
        OrderQuestion question = question(new Random(7), 7);
        assertThat(new OrderSearch(question).best().costHmm()).isEqualTo(brute(question));
    }

    @Test
    void isTheSameTwice() {
        OrderQuestion question = question(new Random(3), 6);
        assertThat(new OrderSearch(question).best()).isEqualTo(new OrderSearch(question).best());
    }

    @Test
    void reservoirFeedsPumpAndMarksAreKept() {
        for (int seed = 100; seed < 130; seed++) {
            OrderQuestion question = question(new Random(seed), 5);
            Round best = new OrderSearch(question).best();
            if (question.feeder() >= 0) {
                int at = best.sequence().indexOf(question.feeder());
                assertThat(best.sequence().get((at + 1) % 5)).as("seed " + seed).isEqualTo(question.fed());
            }
            for (int i = 0; i < 5; i++) {
                assertThat(question.parts().get(i).pairs())
                        .contains(best.ports().get(i));
            }
        }
    }

    private static OrderQuestion question(Random random, int parts) {
        List<Stop> stops = new ArrayList<>();
        int ports = 0;
        for (int i = 0; i < parts; i++) {
            int count = 2 + (random.nextInt(3) == 0 ? 1 : 0);
            List<Integer> all = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                all.add(ports++);
            }
            boolean marked = random.nextInt(3) == 0;
            stops.add(marked ? new Stop(all.subList(0, 1), all.subList(1, count)) : new Stop(all, all));
        }
        List<List<Integer>> costs = new ArrayList<>();
        for (int i = 0; i < ports; i++) {
            List<Integer> row = new ArrayList<>();
            for (int j = 0; j < ports; j++) {
                row.add(random.nextInt(9) == 0 ? 1_000_000 : random.nextInt(60_000));
            }
            costs.add(row);
        }
        boolean apart = random.nextBoolean();
        return new OrderQuestion(stops, apart ? 0 : -1, apart ? 1 : -1, costs);
    }

    private static int brute(OrderQuestion question) {
        List<Integer> rest = new ArrayList<>();
        for (int i = 1; i < question.parts().size(); i++) {
            rest.add(i);
        }
        return permute(question, new ArrayList<>(List.of(0)), rest);
    }

    private static int permute(OrderQuestion question, List<Integer> sequence, List<Integer> rest) {
        if (rest.isEmpty()) {
            int at = sequence.indexOf(question.feeder());
            boolean fed = question.feeder() < 0 || sequence.get((at + 1) % sequence.size()) == question.fed();
            return fed ? pick(question, sequence, new ArrayList<>()) : Integer.MAX_VALUE;
        }
        int best = Integer.MAX_VALUE;
        for (Integer next : rest) {
            List<Integer> more = new ArrayList<>(sequence);
            more.add(next);
            List<Integer> left = new ArrayList<>(rest);
            left.remove(next);
            best = Math.min(best, permute(question, more, left));
        }
        return best;
    }

    private static int pick(OrderQuestion question, List<Integer> sequence, List<Pair> ports) {
        if (ports.size() == sequence.size()) {
            return cost(question, sequence, ports);
        }
        int best = Integer.MAX_VALUE;
        for (Pair pair : question.parts().get(ports.size()).pairs()) {
            List<Pair> more = new ArrayList<>(ports);
            more.add(pair);
            best = Math.min(best, pick(question, sequence, more));
        }
        return best;
    }

    private static int cost(OrderQuestion question, List<Integer> sequence, List<Pair> ports) {
        int sum = 0;
        for (int i = 0; i < sequence.size(); i++) {
            int out = ports.get(sequence.get(i)).out();
            int in = ports.get(sequence.get((i + 1) % sequence.size())).in();
            sum += question.costs().get(out).get(in);
        }
        return sum;
    }
}

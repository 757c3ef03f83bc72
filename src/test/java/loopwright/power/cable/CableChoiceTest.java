package loopwright.power.cable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Supply;
import org.junit.jupiter.api.Test;

/** The choice of cables against every way to share what is wanted, each cable worked out anew. */
class CableChoiceTest {

    private static final int SEEDS = 300;

    private static Supply.Cable cable(int plugs, double lengthMm, double toNextMm) {
        return cable(plugs, lengthMm, toNextMm, false);
    }

    private static Supply.Cable cable(int plugs, double lengthMm, double toNextMm, boolean fixed) {
        return new Supply.Cable(
                Plug.SATA, plugs, lengthMm, plugs > 1 ? Optional.of(toNextMm) : Optional.empty(), fixed);
    }

    private static int whole(Supply.Cable cable) {
        return (int) (cable.lengthMm() + (cable.plugs() - 1) * cable.toNextMm().orElse(0.0));
    }

    private record Question(List<Supply.Cable> cables, Wants wants) {}

    private static Question question(int seed) {
        Random dice = new Random(seed);
        List<Supply.Cable> cables = new ArrayList<>();
        int count = 1 + dice.nextInt(3);
        for (int i = 0; i < count; i++) {
            cables.add(cable(
                    1 + dice.nextInt(4), 200 + 50 * dice.nextInt(8), 80 + 10 * dice.nextInt(8), dice.nextBoolean()));
        }
        int n = 1 + dice.nextInt(4);
        List<Integer> from = new ArrayList<>();
        List<List<Integer>> between = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            from.add(150 + dice.nextInt(500));
            between.add(new ArrayList<>(Collections.nCopies(n, 0)));
        }
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                int apart = 20 + dice.nextInt(260);
                between.get(i).set(j, apart);
                between.get(j).set(i, apart);
            }
        }
        return new Question(cables, new Wants(from, between));
    }

    /** Missed, lacking and left over of one cable that feeds some, over every choice of plugs in order. */
    private static int[] brute(Supply.Cable cable, Wants wants, List<Integer> fed) {
        List<Integer> left = new ArrayList<>(fed);
        List<Integer> links = new ArrayList<>();
        int last = -1;
        while (!left.isEmpty()) {
            int best = -1;
            for (int each : left) {
                if (best < 0 || apart(wants, last, each) < apart(wants, last, best)) {
                    best = each;
                }
            }
            links.add(apart(wants, last, best));
            last = best;
            left.remove(Integer.valueOf(best));
        }
        int toNext = cable.toNextMm().orElse(0.0).intValue();
        int whole = (int) cable.lengthMm() + (cable.plugs() - 1) * toNext;
        int wanted = links.stream().mapToInt(l -> l).sum();
        for (int plugs = 0; plugs < 1 << cable.plugs(); plugs++) {
            if (Integer.bitCount(plugs) == links.size() && reaches(cable, links, plugs)) {
                return new int[] {0, 0, whole - wanted};
            }
        }
        int missed = 0;
        int lacks = 0;
        int over = (cable.plugs() - links.size()) * toNext;
        for (int i = 0; i < links.size(); i++) {
            int has = i == 0 ? (int) cable.lengthMm() : toNext;
            missed += has < links.get(i) ? 1 : 0;
            lacks += Math.max(0, links.get(i) - has);
            over += Math.max(0, has - links.get(i));
        }
        return new int[] {missed, lacks, over};
    }

    private static int apart(Wants wants, int from, int to) {
        return from < 0
                ? wants.fromSupplyMm().get(to)
                : wants.betweenMm().get(from).get(to);
    }

    private static boolean reaches(Supply.Cable cable, List<Integer> links, int plugs) {
        double before = 0;
        int link = 0;
        for (int p = 0; p < cable.plugs(); p++) {
            if ((plugs >> p & 1) == 1) {
                double at = cable.lengthMm() + p * cable.toNextMm().orElse(0.0);
                if (at - before < links.get(link)) {
                    return false;
                }
                before = at;
                link++;
            }
        }
        return true;
    }

    private static final CableChoice.Score NOTHING_FOUND = new CableChoice.Score(Integer.MAX_VALUE, 0, 0, 0, 0);

    private static CableChoice.Score bruteBest(Question q) {
        CableChoice.Score best = NOTHING_FOUND;
        int choices = q.cables().size() + 1;
        int all = (int) Math.pow(choices, q.wants().count());
        for (int choice = 0; choice < all; choice++) {
            List<List<Integer>> fed = new ArrayList<>();
            for (int c = 0; c < choices; c++) {
                fed.add(new ArrayList<>());
            }
            int rest = choice;
            for (int want = 0; want < q.wants().count(); want++) {
                fed.get(rest % choices).add(want);
                rest /= choices;
            }
            int[] sum = new int[4];
            boolean possible = true;
            for (int c = 0; c < q.cables().size(); c++) {
                List<Integer> its = fed.get(c);
                possible &= its.size() <= q.cables().get(c).plugs();
                if (possible && !its.isEmpty()) {
                    int[] one = brute(q.cables().get(c), q.wants(), its);
                    sum[0] += one[0];
                    sum[1] += one[1];
                    sum[2] += one[2];
                    sum[3]++;
                } else if (its.isEmpty() && q.cables().get(c).fixed()) {
                    sum[2] += whole(q.cables().get(c));
                }
            }
            CableChoice.Score score =
                    new CableChoice.Score(fed.get(q.cables().size()).size(), sum[0], sum[1], sum[2], sum[3]);
            if (possible && score.compareTo(best) < 0) {
                best = score;
            }
        }
        return best;
    }

    @Test
    void isTheBestOfAll() {
        int chains = 0;
        int shorts = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Question q = question(seed);
            List<Optional<Run>> runs = CableChoice.of(q.cables(), q.wants()).runs();
            CableChoice.Score score = CableChoice.Score.ZERO;
            int fed = 0;
            int cables = 0;
            for (Optional<Run> run : runs) {
                Supply.Cable cable = q.cables().get(cables++);
                score = run.isPresent() ? score : score.leaving(cable);
                if (run.isPresent()) {
                    score = score.plus(run.get());
                    fed += run.get().links().size();
                    chains += run.get().links().size() > 1 ? 1 : 0;
                    shorts += run.get().shortLinks() > 0 ? 1 : 0;
                }
            }
            assertThat(new CableChoice.Score(
                            q.wants().count() - fed, score.missed(), score.lacksMm(), score.overMm(), score.cables()))
                    .as("seed " + seed)
                    .isEqualTo(bruteBest(q));
        }
        assertThat(chains).isGreaterThan(SEEDS / 10);
        assertThat(shorts).isGreaterThan(SEEDS / 20);
    }

    /** Of two that reach, the shorter; by hand. */
    @Test
    void takesTheShortestThatReaches() {
        Wants wants = new Wants(List.of(500), List.of(List.of(0)));
        List<Optional<Run>> runs = CableChoice.of(List.of(cable(1, 700, 0), cable(1, 550, 0), cable(1, 450, 0)), wants)
                .runs();
        assertThat(runs.get(0)).isEmpty();
        assertThat(runs.get(1)).contains(new Run(List.of(new Run.Link(0, 500, 550)), 50));
        assertThat(runs.get(2)).isEmpty();
    }

    /** 450 and three times 150: the second drive is 200 on, so a plug hangs between; by hand. */
    @Test
    void leavesAPlugHangingWhereTheNextIsTooFar() {
        Wants wants = new Wants(List.of(400, 600), List.of(List.of(0, 200), List.of(200, 0)));
        Run run =
                CableChoice.of(List.of(cable(4, 450, 150)), wants).runs().get(0).orElseThrow();
        assertThat(run.links()).containsExactly(new Run.Link(0, 400, 450), new Run.Link(1, 200, 300));
        assertThat(run.overMm()).isEqualTo(50 + 100 + 150);
    }

    /** Two alike: the first; of a fixed and a loose one the fixed, wherever it stands. */
    @Test
    void takesTheFirstAndTheFixed() {
        Wants wants = new Wants(List.of(500), List.of(List.of(0)));
        assertThat(CableChoice.of(List.of(cable(1, 550, 0), cable(1, 550, 0)), wants)
                        .runs()
                        .get(0))
                .isPresent();
        assertThat(CableChoice.of(List.of(cable(1, 550, 0), cable(1, 700, 0, true)), wants)
                        .runs()
                        .get(1))
                .isPresent();
    }
}

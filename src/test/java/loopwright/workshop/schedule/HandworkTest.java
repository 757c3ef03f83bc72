package loopwright.workshop.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** One pair of hands against every order there is, and what must hold of any schedule. */
class HandworkTest {

    private static final int SEEDS = 150;

    /** Short days, weekends off, so that nights and days off decide. */
    private static Clock clock(SplittableRandom dice) {
        return new Clock(
                LocalDate.of(2026, 3, 5),
                d -> d.getDayOfWeek() != DayOfWeek.SATURDAY && d.getDayOfWeek() != DayOfWeek.SUNDAY,
                9 * 60,
                60 + 5 * dice.nextInt(20));
    }

    private static Network network(SplittableRandom dice, int most) {
        int count = 2 + dice.nextInt(most - 1);
        List<Job> jobs = new ArrayList<>();
        List<Network.Link> links = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int from = dice.nextInt(3) == 0 ? dice.nextInt(60) : 0;
            jobs.add(new Job("job " + i, dice.nextInt(6) == 0 ? 0 : 1 + dice.nextInt(11), dice.nextInt(3) == 0, from));
            for (int j = 0; j < i; j++) {
                if (dice.nextInt(5) == 0) {
                    int wait = dice.nextInt(2) == 0 ? 0 : dice.nextInt(2000);
                    links.add(new Network.Link(j, i, wait));
                }
            }
        }
        return new Network(jobs, links);
    }

    @Test
    void endsAsEarlyAsTheBestOfAllOrders() {
        int searched = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            Clock clock = clock(dice);
            Network network = network(dice, 8);
            Handwork found = Handwork.of(network, clock, Handwork.NODES);
            int best = best(network, clock, new ArrayList<>(), hands(network));
            assertThat(found.timing().end()).as("seed %s", seed).isEqualTo(best);
            assertThat(found.proven()).as("seed %s", seed).isTrue();
            Timing first = Timing.greedy(
                    network, clock, CriticalPath.of(network, clock).latest());
            searched += first.end() > best ? 1 : 0;
        }
        assertThat(searched)
                .as("cases in which the simple order is not the best")
                .isGreaterThan(2);
    }

    private static List<Integer> hands(Network network) {
        return java.util.stream.IntStream.range(0, network.jobs().size())
                .filter(i -> network.jobs().get(i).steps() > 0)
                .boxed()
                .toList();
    }

    /** Every order of the hands-on jobs, each as early as it can be, by a plain reckoning of minutes. */
    private static int best(Network network, Clock clock, List<Integer> order, List<Integer> left) {
        if (left.isEmpty()) {
            return end(network, clock, order);
        }
        int best = Integer.MAX_VALUE;
        for (Integer next : left) {
            List<Integer> rest = new ArrayList<>(left);
            rest.remove(next);
            order.add(next);
            best = Math.min(best, best(network, clock, order, rest));
            order.remove(order.size() - 1);
        }
        return best;
    }

    /** The end of an order; no end where the links forbid it. Steps are tried one by one. */
    private static int end(Network network, Clock clock, List<Integer> order) {
        int count = network.jobs().size();
        Integer[] start = new Integer[count];
        int free = 0;
        int end = 0;
        int at = 0;
        for (int done = 0; done < count; done++) {
            int pick = -1;
            for (int i = 0; i < count && pick < 0; i++) {
                boolean open = start[i] == null;
                for (Network.Link link : network.links()) {
                    open &= link.to() != i || start[link.from()] != null;
                }
                boolean turn = network.jobs().get(i).steps() == 0 || (at < order.size() && order.get(at) == i);
                pick = open && turn ? i : pick;
            }
            if (pick < 0) {
                return Integer.MAX_VALUE;
            }
            Job job = network.jobs().get(pick);
            int step = Math.max(job.fromStep(), job.steps() > 0 ? free : 0);
            while (!may(network, clock, start, pick, step)) {
                step++;
            }
            start[pick] = step;
            if (job.steps() > 0) {
                free = step + job.steps();
                at++;
            }
            end = Math.max(end, step + job.steps());
        }
        return end;
    }

    private static boolean may(Network network, Clock clock, Integer[] start, int job, int step) {
        Job its = network.jobs().get(job);
        boolean night = its.unbroken()
                && its.steps() > 0
                && its.steps() <= clock.daySteps()
                && !clock.begin(step)
                        .toLocalDate()
                        .equals(clock.end(step + its.steps()).toLocalDate());
        boolean early = false;
        for (Network.Link link : network.links()) {
            if (link.to() == job) {
                int reach = start[link.from()] + network.jobs().get(link.from()).steps();
                boolean soon = link.waitMin() > 0
                        && clock.begin(step).isBefore(clock.end(reach).plusMinutes(link.waitMin()));
                early |= step < reach || soon;
            }
        }
        return !night && !early;
    }

    @Test
    void keepsWhatHoldsOfAnySchedule() {
        for (long seed = 1000; seed < 1000 + SEEDS; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            Clock clock = clock(dice);
            Network network = network(dice, 14);
            Handwork found = Handwork.of(network, clock, 500);
            Timing timing = found.timing();
            int hands = network.jobs().stream().mapToInt(Job::steps).sum();
            assertThat(timing.end())
                    .as("seed %s", seed)
                    .isGreaterThanOrEqualTo(CriticalPath.of(network, clock).end())
                    .isGreaterThanOrEqualTo(hands)
                    .isGreaterThanOrEqualTo(found.leastEnd());
            Integer[] starts = timing.starts().toArray(Integer[]::new);
            for (int i = 0; i < starts.length; i++) {
                assertThat(may(network, clock, starts, i, starts[i]))
                        .as("seed %s job %s", seed, i)
                        .isTrue();
                assertThat(starts[i])
                        .isGreaterThanOrEqualTo(network.jobs().get(i).fromStep());
                for (int j = 0; j < i; j++) {
                    boolean both = network.jobs().get(i).steps() > 0
                            && network.jobs().get(j).steps() > 0;
                    boolean apart = starts[i]
                                    >= starts[j] + network.jobs().get(j).steps()
                            || starts[j] >= starts[i] + network.jobs().get(i).steps();
                    assertThat(!both || apart)
                            .as("seed %s hands at %s and %s", seed, i, j)
                            .isTrue();
                }
            }
        }
    }

    /** Jobs in pairs that follow at once, on the same day, whatever else waits for them. */
    @Test
    void whatFollowsAtOnceIsNotPartedByANight() {
        for (long seed = 3000; seed < 3000 + SEEDS; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            Clock clock = clock(dice);
            List<Job> jobs = new ArrayList<>();
            List<Network.Link> links = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                jobs.add(new Job("job " + i, 1 + dice.nextInt(6), true, dice.nextInt(30)));
                if (i % 2 == 1) {
                    links.add(new Network.Link(i - 1, i, 0, true));
                } else if (i > 0) {
                    links.add(new Network.Link(dice.nextInt(i), i, dice.nextInt(2000)));
                }
            }
            Network network = new Network(jobs, links);
            Timing timing = Handwork.of(network, clock, 500).timing();
            Integer[] starts = timing.starts().toArray(Integer[]::new);
            List<Integer> spare = Spare.of(network, clock, timing);
            for (int i = 0; i < 8; i++) {
                assertThat(may(network, clock, starts, i, starts[i]))
                        .as("seed %s job %s", seed, i)
                        .isTrue();
                assertThat(spare.get(i)).as("seed %s job %s", seed, i).isNotNegative();
                if (i % 2 == 1) {
                    assertThat(starts[i])
                            .isEqualTo(starts[i - 1] + jobs.get(i - 1).steps());
                    assertThat(clock.begin(starts[i - 1]).toLocalDate())
                            .as("seed %s job %s", seed, i)
                            .isEqualTo(
                                    clock.end(starts[i] + jobs.get(i).steps()).toLocalDate());
                    assertThat(spare.get(i)).isEqualTo(spare.get(i - 1));
                }
            }
            assertThat(spare).as("seed %s: the end hangs on something", seed).contains(0);
        }
    }

    @Test
    void withOnePairOfHandsTheBookTakesTheSumOfItsWeeks() {
        Network network = CriticalPathTest.reliable();
        int sum = network.jobs().stream().mapToInt(Job::steps).sum();
        Handwork found = Handwork.of(network, Clock.withoutNights(), Handwork.NODES);
        assertThat(found.timing().end()).isEqualTo(sum);
        assertThat(found.proven()).isTrue();
    }
}

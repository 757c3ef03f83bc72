package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * When each job starts.
 *
 * @param starts a step a job
 * @param end the step up to which the last reaches
 */
record Timing(List<Integer> starts, int end) {

    Timing {
        starts = List.copyOf(starts);
    }

    /** Everything as early as it can be, hands-on jobs one after the other in the order given. */
    static Timing inOrder(Network network, Clock clock, List<Integer> hands) {
        int count = network.jobs().size();
        List<Integer> starts = new ArrayList<>(Collections.nCopies(count, -1));
        int free = 0;
        int next = 0;
        int end = 0;
        for (int done = 0; done < count; done++) {
            int pick = -1;
            for (int i : network.inOrder()) {
                boolean open = starts.get(i) < 0 && network.into(i).stream().allMatch(l -> starts.get(l.from()) >= 0);
                boolean turn = network.jobs().get(i).steps() == 0 || (next < hands.size() && hands.get(next) == i);
                if (pick < 0 && open && turn) {
                    pick = i;
                }
            }
            if (pick < 0) {
                throw new IllegalArgumentException("an order that the links forbid");
            }
            Job job = network.jobs().get(pick);
            boolean byHand = job.steps() > 0;
            int start = clock.fit(Math.max(ready(network, clock, starts, pick), byHand ? free : 0), job);
            starts.set(pick, start);
            free = byHand ? start + job.steps() : free;
            next += byHand ? 1 : 0;
            end = Math.max(end, start + job.steps());
        }
        return new Timing(starts, end);
    }

    /** The first step at which what a job waits for is done. */
    static int ready(Network network, Clock clock, List<Integer> starts, int i) {
        int start = network.jobs().get(i).fromStep();
        for (Network.Link link : network.into(i)) {
            int before =
                    starts.get(link.from()) + network.jobs().get(link.from()).steps();
            start = Math.max(start, clock.after(before, link.waitMin()));
        }
        return start;
    }

    /** The order of the hands. */
    List<Integer> hands(Network network) {
        return IntStream.range(0, starts.size())
                .filter(i -> network.jobs().get(i).steps() > 0)
                .boxed()
                .sorted(Comparator.comparing(starts::get))
                .toList();
    }

    /** Always the job that can begin first, of several the one whose rank is smallest. */
    static Timing greedy(Network network, Clock clock, List<Integer> rank) {
        int count = network.jobs().size();
        List<Integer> starts = new ArrayList<>(Collections.nCopies(count, -1));
        int free = 0;
        int end = 0;
        for (int done = 0; done < count; done++) {
            int pick = -1;
            int pickStart = Integer.MAX_VALUE;
            for (int i = 0; i < count; i++) {
                int at = i;
                boolean open = starts.get(i) < 0 && network.into(at).stream().allMatch(l -> starts.get(l.from()) >= 0);
                if (open) {
                    Job job = network.jobs().get(i);
                    int start = clock.fit(Math.max(ready(network, clock, starts, i), job.steps() > 0 ? free : 0), job);
                    boolean first = start < pickStart || (start == pickStart && rank.get(i) < rank.get(pick));
                    pick = first ? i : pick;
                    pickStart = first ? start : pickStart;
                }
            }
            Job job = network.jobs().get(pick);
            starts.set(pick, pickStart);
            free = job.steps() > 0 ? pickStart + job.steps() : free;
            end = Math.max(end, pickStart + job.steps());
        }
        return new Timing(starts, end);
    }
}

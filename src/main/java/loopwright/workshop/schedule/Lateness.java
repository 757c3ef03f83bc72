package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the end becomes when something comes later; each answer is a schedule of its own. */
final class Lateness {

    /** Days of slack that are looked for. */
    static final int MOST_DAYS = 60;

    /** Asked very often, so searched less far than the schedule itself. */
    private static final int LESS = 20;

    private final Network network;
    private final Clock clock;
    private final int end;
    private final long nodes;
    private final Map<String, Integer> ends = new HashMap<>();
    private final Map<String, Integer> slacks = new HashMap<>();

    Lateness(Network network, Clock clock, int end, long nodes) {
        this.network = network;
        this.clock = clock;
        this.end = end;
        this.nodes = Math.max(1, nodes / LESS);
    }

    /** The end when what a task needs comes so many days after the first; never before the end known. */
    int end(int task, int days) {
        int from = Math.max(network.jobs().get(task).fromStep(), clock.arrival(days));
        return ends.computeIfAbsent(task + " " + from, k -> {
            if (from == network.jobs().get(task).fromStep()) {
                return end;
            }
            List<Job> jobs = new ArrayList<>(network.jobs());
            jobs.set(task, jobs.get(task).from(from));
            return Math.max(
                    end,
                    Handwork.of(new Network(jobs, network.links()), clock, nodes)
                            .timing()
                            .end());
        });
    }

    /** How many days late it may be without a later end. */
    int slackDays(int task, int leadDays) {
        return slacks.computeIfAbsent(task + " " + leadDays, k -> {
            int low = 0;
            int high = MOST_DAYS;
            while (low < high) {
                int middle = (low + high + 1) / 2;
                if (end(task, leadDays + middle) <= end) {
                    low = middle;
                } else {
                    high = middle - 1;
                }
            }
            return low;
        });
    }
}

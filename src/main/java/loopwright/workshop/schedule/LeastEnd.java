package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A bound under every schedule of one pair of hands: jobs between their earliest and latest starts, allowed to be broken off
 * and taken up again. The job with the earliest deadline first is best then (Jackson 1955; Horn 1974), so one pass decides.
 */
final class LeastEnd {

    private LeastEnd() {}

    /** The least end that broken-off jobs could have, at most {@code known}. */
    static int of(Network network, Clock clock, CriticalPath path, int known) {
        int low = path.end();
        int high = known;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (canEnd(network, path, CriticalPath.latestFor(network, clock, middle))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static boolean canEnd(Network network, CriticalPath path, List<Integer> latest) {
        List<Integer> waiting = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < network.jobs().size(); i++) {
            left.add(network.jobs().get(i).steps());
            if (latest.get(i) < path.earliest().get(i)) {
                return false;
            }
            if (left.get(i) > 0) {
                waiting.add(i);
            }
        }
        int now = 0;
        while (!waiting.isEmpty()) {
            int at = now;
            List<Integer> open = waiting.stream()
                    .filter(i -> path.earliest().get(i) <= at)
                    .sorted(Comparator.comparing(
                            (Integer i) -> latest.get(i) + network.jobs().get(i).steps()))
                    .toList();
            int next = waiting.stream()
                    .map(i -> path.earliest().get(i))
                    .filter(e -> e > at)
                    .min(Comparator.naturalOrder())
                    .orElse(Integer.MAX_VALUE);
            if (open.isEmpty()) {
                now = next;
                continue;
            }
            Integer job = open.get(0);
            int work = Math.min(left.get(job), next - now);
            now += work;
            left.set(job, left.get(job) - work);
            if (left.get(job) == 0) {
                if (now > latest.get(job) + network.jobs().get(job).steps()) {
                    return false;
                }
                waiting.remove(job);
            }
        }
        return true;
    }
}

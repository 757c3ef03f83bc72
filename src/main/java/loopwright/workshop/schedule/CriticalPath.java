package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The critical path of a network when hands are no limit: earliest and latest starts, and the slack between.
 *
 * <p>Forward and backward pass as in every textbook (Hillier, Lieberman: Introduction to Operations Research, ch. 22), on
 * working time with waits that run through nights.
 *
 * @param earliest start of each job, steps
 * @param latest start of each job that does not delay the end
 * @param end the earliest end of all
 */
public record CriticalPath(List<Integer> earliest, List<Integer> latest, int end) {

    /** Copies. */
    public CriticalPath {
        earliest = List.copyOf(earliest);
        latest = List.copyOf(latest);
    }

    /** The critical path of a network. */
    public static CriticalPath of(Network network, Clock clock) {
        List<Integer> earliest =
                new ArrayList<>(Collections.nCopies(network.jobs().size(), 0));
        int end = 0;
        for (int i : network.inOrder()) {
            Job job = network.jobs().get(i);
            int start = job.fromStep();
            for (Network.Link link : network.into(i)) {
                int before = earliest.get(link.from())
                        + network.jobs().get(link.from()).steps();
                start = Math.max(start, clock.after(before, link.waitMin()));
            }
            earliest.set(i, clock.fit(start, job));
            end = Math.max(end, earliest.get(i) + job.steps());
        }
        return new CriticalPath(earliest, latestFor(network, clock, end), end);
    }

    /** The latest start of each job for an end at a step; below its earliest where that end cannot be had. */
    static List<Integer> latestFor(Network network, Clock clock, int end) {
        List<Integer> latest =
                new ArrayList<>(Collections.nCopies(network.jobs().size(), 0));
        List<Integer> backwards = new ArrayList<>(network.inOrder());
        Collections.reverse(backwards);
        for (int i : backwards) {
            Job job = network.jobs().get(i);
            int reach = end;
            for (Network.Link link : network.outOf(i)) {
                int start = latest.get(link.to());
                reach = Math.min(reach, start < 0 ? -1 : clock.before(start, link.waitMin()));
            }
            latest.set(i, clock.fitBack(reach - job.steps(), job));
        }
        return latest;
    }

    /** Steps that a job can start later without a later end. */
    public int slack(int job) {
        return latest.get(job) - earliest.get(job);
    }
}

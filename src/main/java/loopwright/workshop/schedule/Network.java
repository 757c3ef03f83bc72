package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.List;

/** Jobs and what has to come before what. */
public record Network(List<Job> jobs, List<Link> links) {

    /**
     * One job before another.
     *
     * @param from number of the job that comes first
     * @param to number of the job that comes after
     * @param waitMin minutes between them, through nights and days off
     * @param atOnce whether it also follows without any pause, on the same day
     */
    public record Link(int from, int to, int waitMin, boolean atOnce) {
        /** One that may follow at any time later. */
        public Link(int from, int to, int waitMin) {
            this(from, to, waitMin, false);
        }
    }

    /** Copies; refuses links that go round in a circle. */
    public Network {
        jobs = List.copyOf(jobs);
        links = List.copyOf(links);
        if (inOrder(jobs, links).size() < jobs.size()) {
            throw new IllegalArgumentException("links that go round in a circle");
        }
    }

    /** The jobs' numbers, none before one that it waits for. */
    List<Integer> inOrder() {
        return inOrder(jobs, links);
    }

    private static List<Integer> inOrder(List<Job> jobs, List<Link> links) {
        List<Integer> out = new ArrayList<>();
        boolean grew = true;
        while (grew) {
            grew = false;
            for (int i = 0; i < jobs.size(); i++) {
                int job = i;
                boolean free = links.stream().allMatch(l -> l.to() != job || out.contains(l.from()));
                if (free && !out.contains(i)) {
                    out.add(i);
                    grew = true;
                }
            }
        }
        return List.copyOf(out);
    }

    /** The links that lead to a job. */
    List<Link> into(int job) {
        return links.stream().filter(l -> l.to() == job).toList();
    }

    /** The links that lead from a job. */
    List<Link> outOf(int job) {
        return links.stream().filter(l -> l.from() == job).toList();
    }
}

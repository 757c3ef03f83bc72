package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loopwright.workshop.schedule.Schedule.CriticalLink;
import loopwright.workshop.schedule.Schedule.WaitedFor;

/** Walks back from the last task: each had to wait for another task, for the hands, or for a part. */
final class Chain {

    private Chain() {}

    static List<CriticalLink> of(Network network, Clock clock, Timing timing) {
        List<CriticalLink> out = new ArrayList<>();
        int at = last(network, timing);
        boolean open = true;
        while (open) {
            Job job = network.jobs().get(at);
            int start = timing.starts().get(at);
            int next = -1;
            WaitedFor why = job.fromStep() > 0 ? WaitedFor.ARRIVAL : WaitedFor.START;
            int reached = clock.fit(job.fromStep(), job);
            for (Network.Link link : network.into(at)) {
                Job before = network.jobs().get(link.from());
                int free =
                        clock.fit(clock.after(timing.starts().get(link.from()) + before.steps(), link.waitMin()), job);
                if (free > reached || (next < 0 && free == start && reached < start)) {
                    reached = free;
                    next = link.from();
                    why = WaitedFor.TASK;
                }
            }
            if (job.steps() > 0 && reached < start) {
                next = handsBefore(network, timing, at);
                why = WaitedFor.HANDS;
            }
            open = next >= 0;
            out.add(new CriticalLink(
                    job.id(), why, open ? network.jobs().get(next).id() : ""));
            at = next;
        }
        Collections.reverse(out);
        return List.copyOf(out);
    }

    private static int last(Network network, Timing timing) {
        int out = 0;
        for (int i = 0; i < network.jobs().size(); i++) {
            boolean later = timing.starts().get(i) + network.jobs().get(i).steps()
                    > timing.starts().get(out) + network.jobs().get(out).steps();
            out = later ? i : out;
        }
        return out;
    }

    private static int handsBefore(Network network, Timing timing, int job) {
        List<Integer> hands = timing.hands(network);
        int at = hands.indexOf(job);
        return at > 0 ? hands.get(at - 1) : -1;
    }
}

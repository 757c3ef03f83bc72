package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * Jobs that follow another at once, joined to one piece of work for the solver: coats that go over each other.
 *
 * <p>What waits for any job of a piece waits for the whole piece, and the piece for all that its jobs wait for.
 *
 * @param joined the network of the pieces
 * @param piece the piece of each job
 * @param offset steps from the piece's start to the job's
 */
record OneGo(Network joined, List<Integer> piece, List<Integer> offset) {

    OneGo {
        piece = List.copyOf(piece);
        offset = List.copyOf(offset);
    }

    static OneGo of(Network network) {
        int count = network.jobs().size();
        Integer[] piece = new Integer[count];
        Integer[] offset = new Integer[count];
        List<Job> jobs = new ArrayList<>();
        for (int i : network.inOrder()) {
            Job job = network.jobs().get(i);
            Network.Link at = network.into(i).stream()
                    .filter(Network.Link::atOnce)
                    .findFirst()
                    .orElse(null);
            if (at == null) {
                piece[i] = jobs.size();
                offset[i] = 0;
                jobs.add(job);
            } else {
                Job head = jobs.get(piece[at.from()]);
                piece[i] = piece[at.from()];
                offset[i] = head.steps();
                jobs.set(
                        piece[i],
                        new Job(
                                head.id(),
                                head.steps() + job.steps(),
                                true,
                                Math.max(head.fromStep(), job.fromStep())));
            }
        }
        List<Network.Link> links = network.links().stream()
                .filter(l -> !piece[l.from()].equals(piece[l.to()]))
                .map(l -> new Network.Link(piece[l.from()], piece[l.to()], l.waitMin()))
                .toList();
        return new OneGo(new Network(jobs, links), List.of(piece), List.of(offset));
    }

    /** When each job of the pieces starts. */
    Timing split(Timing pieces) {
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < piece.size(); i++) {
            starts.add(pieces.starts().get(piece.get(i)) + offset.get(i));
        }
        return new Timing(starts, pieces.end());
    }
}

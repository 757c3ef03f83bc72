package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * How many steps each job could begin later with the same end, when the hands keep their order: what follows at once moves
 * with it. A job with none is what the end hangs on; a night or a weekend after a job may leave it some.
 */
final class Spare {

    private Spare() {}

    static List<Integer> of(Network network, Clock clock, Timing timing) {
        OneGo goes = OneGo.of(network);
        List<Integer> starts = new ArrayList<>();
        for (int i = 0; i < goes.joined().jobs().size(); i++) {
            starts.add(timing.starts().get(goes.piece().indexOf(i)));
        }
        Timing pieces = new Timing(starts, timing.end());
        List<Network.Link> links = new ArrayList<>(goes.joined().links());
        List<Integer> hands = pieces.hands(goes.joined());
        for (int i = 1; i < hands.size(); i++) {
            links.add(new Network.Link(hands.get(i - 1), hands.get(i), 0));
        }
        Network inOrder = new Network(goes.joined().jobs(), links);
        List<Integer> latest = CriticalPath.latestFor(inOrder, clock, timing.end());
        return goes.piece().stream().map(p -> latest.get(p) - starts.get(p)).toList();
    }
}

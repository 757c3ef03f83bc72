package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.List;

/** What no move along the axes does, even in an empty chassis: not called impossible, but named. */
final class ByHand {

    private ByHand() {}

    static List<String> of(Piece piece, List<Need> unmet) {
        List<String> out = new ArrayList<>();
        long screws = unmet.stream().filter(n -> n.kind() == Need.Kind.DRIVER).count();
        for (Need need : unmet) {
            switch (need.kind()) {
                case WAY ->
                    out.add(need.what()
                            + ": no way in along the axes; try the tilt with a card dummy before anything is cut");
                case HAND ->
                    out.add(piece.title() + ": " + need.what()
                            + " cannot be reached straight through an open side; try by hand at the dry fit");
                case DRIVER -> {
                    // counted below
                }
            }
        }
        if (screws > 0) {
            int all = piece.screws().stream().mapToInt(s -> s.known().size()).sum();
            out.add(piece.title() + ": no straight driver gets to " + screws + " of " + all
                    + " screws, even in the empty chassis; try an angled driver at the dry fit");
        }
        return out;
    }
}

package loopwright.workshop.assembly;

import java.util.HashSet;
import java.util.Set;

/** What is plugged into a piece: it goes in after it and comes out before it. */
final class Carried {

    private Carried() {}

    static Set<String> by(String id, RunPieces runs, BoardPieces onBoard) {
        Set<String> out = new HashSet<>(runs.of().getOrDefault(id, Set.of()));
        if (id.equals("board")) {
            out.addAll(Set.of("memory", "block", "card"));
            onBoard.plugs().forEach(p -> out.add(p.id()));
        }
        if (id.equals("supply")) {
            out.addAll(onBoard.fromSupply());
        }
        return out;
    }
}

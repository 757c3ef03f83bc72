package loopwright.workshop.assembly;

import java.util.List;
import java.util.Set;
import loopwright.geometry.SpaceBox;

/**
 * Something that is put in as one.
 *
 * @param solids its matter where it stands, hundredths of a millimetre
 * @param reach rooms that a hand or a driver must get to once it is in: plugs, ports
 * @param wet whether coolant is in it
 * @param carries ids of pieces that are plugged into it: they go in after it and come out before it
 * @param turn when a builder usually puts it in, small first; only decides between orders that are possible
 */
public record Piece(
        String id,
        String title,
        List<SpaceBox> solids,
        List<SpaceBox> reach,
        boolean wet,
        int turn,
        Set<String> carries) {

    /** A piece that nothing is plugged into. */
    public Piece(String id, String title, List<SpaceBox> solids, List<SpaceBox> reach, boolean wet, int turn) {
        this(id, title, solids, reach, wet, turn, Set.of());
    }

    /** Copies. */
    public Piece {
        solids = List.copyOf(solids);
        reach = List.copyOf(reach);
        carries = Set.copyOf(carries);
    }
}

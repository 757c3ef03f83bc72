package loopwright.catalog.chassis;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.part.Board.BoardForm;

/** What is in the case: the board's bay, fixed obstructions, removables and named places. */
public record Inside(BoardBay board, List<Obstruction> obstructions, List<Removable> removables, List<Place> places) {

    /**
     * Where the board goes.
     *
     * @param pose corner at the board's top face, at the edge above the processor and the rear edge; length runs from
     *     that edge down the board, width away from the rear, height away from the board
     * @param against walls it may touch
     * @param touches bodies it may touch
     */
    public record BoardBay(List<BoardForm> forms, Pose pose, List<Face> against, List<String> touches) {}

    /** Something that cannot come out. */
    public record Obstruction(String id, String title, List<Box> boxes) {}

    /** Something that a mod can take out. */
    public record Removable(
            String id, String title, List<Box> boxes, Hold hold, Stiffness stiffness, Optional<Integer> massG) {}

    /** How a removable is held. */
    public enum Hold {
        /** Screwed. */
        SCREWS,
        /** Riveted. */
        RIVETS,
        /** Folded from one piece: it has to be cut out. */
        FOLDED
    }

    /** What taking it out costs the shell. */
    public enum Stiffness {
        /** Nothing to speak of. */
        NONE,
        /** A strip should replace it. */
        SOME,
        /** It ties two walls: a strip must replace it. */
        TIES_WALLS
    }
}

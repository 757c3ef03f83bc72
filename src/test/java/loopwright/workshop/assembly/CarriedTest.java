package loopwright.workshop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import org.junit.jupiter.api.Test;

/** What is plugged into a piece goes in after it and comes out before it, whatever the boxes say. */
class CarriedTest {

    private static final Reach WHOLE = new Reach(0, 10);

    private static Piece piece(String id, int fromX, int turn, Set<String> carries) {
        SpaceBox box = new SpaceBox(id, false, 0, new Reach(fromX, fromX + 1), WHOLE, new Reach(0, 1));
        return new Piece(id, id, List.of(box), List.of(), id.equals("card"), turn, carries);
    }

    @Test
    void theBoardComesOutAfterItsCardAndDrainsTheLoop() {
        List<Piece> pieces = List.of(piece("card", 8, 0, Set.of()), piece("board", 2, 9, Set.of("card")));
        Ways.Hall hall = new Ways.Hall(WHOLE, WHOLE, WHOLE, Set.of(Face.LEFT, Face.RIGHT), List.of());
        Assembly assembly = Assembly.of(pieces, hall, List.of());
        assertThat(assembly.steps()).extracting(Assembly.Step::id).containsExactly("board", "card");
        Assembly.Service board = assembly.services().get(1);
        assertThat(board.first()).containsExactly("card");
        assertThat(board.drain()).isTrue();
    }
}

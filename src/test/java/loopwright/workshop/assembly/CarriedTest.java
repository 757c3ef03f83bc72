package loopwright.workshop.assembly;

import static loopwright.workshop.assembly.Pieces.box;
import static loopwright.workshop.assembly.Pieces.carrying;
import static loopwright.workshop.assembly.Pieces.hall;
import static loopwright.workshop.assembly.Pieces.made;
import static loopwright.workshop.assembly.Pieces.part;
import static loopwright.workshop.assembly.Pieces.reaching;
import static loopwright.workshop.assembly.Pieces.turn;
import static loopwright.workshop.assembly.Pieces.wet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import org.junit.jupiter.api.Test;

/** What is plugged into a piece goes in after it and comes out before it, whatever the boxes say. */
class CarriedTest {

    private static final Hall HALL = hall(Set.of(Face.LEFT, Face.RIGHT), 10);

    private static Piece piece(String id, int fromX) {
        return part(id, box(fromX, fromX + 1, 0, 10, 0, 1));
    }

    @Test
    void theBoardComesOutAfterItsCardAndDrainsTheLoop() {
        List<Piece> pieces = List.of(wet(piece("card", 8)), turn(carrying(piece("board", 2), "card"), 9));
        Assembly assembly = Assembly.of(pieces, HALL, List.of(), List.of());
        assertThat(assembly.steps()).extracting(Assembly.Step::id).containsExactly("board", "card");
        Assembly.Service board = assembly.services().get(1);
        assertThat(board.first()).containsExactly("card");
        assertThat(board.drain()).isTrue();
    }

    /** Memory does not leave through its board, even where the case is open behind it. */
    @Test
    void nothingLeavesThroughWhatItIsPluggedInto() {
        Piece memory = part("memory", box(2, 3, 2, 3, 2, 3));
        Piece board = carrying(part("board", box(3, 4, 0, 5, 0, 5)), "memory");
        Piece stack = part("stack", box(0, 1, 0, 5, 0, 5));
        PuttingIn order =
                new PuttingIn(List.of(memory, board, stack), hall(Set.of(Face.LEFT, Face.RIGHT), 5), List.of());
        assertThat(order.leaves(0, 0b111)).isFalse();
        assertThat(order.leaves(0, 0b011)).isTrue();
        assertThat(new LeastOut(order).before(0)).contains(List.of(2));
    }

    /** A plug joins two parts: a hand has to be there before either comes out. */
    @Test
    void aPlugIsUnpluggedBeforeEitherPartComesOut() {
        Piece plug =
                reaching(made("plug", new Piece.Traits(Piece.Kind.PLUG, false, 5), List.of()), box(2, 3, 2, 3, 2, 3));
        Piece board = carrying(part("board", box(3, 4, 0, 5, 0, 5)), "plug");
        Piece supply = carrying(part("supply", box(4, 5, 0, 5, 0, 5)), "plug");
        Piece radiator = turn(part("radiator", box(0, 1, 0, 5, 0, 5)), 1);
        Assembly assembly = Assembly.of(
                List.of(radiator, board, supply, plug), hall(Set.of(Face.LEFT, Face.RIGHT), 5), List.of(), List.of());
        assertThat(assembly.steps()).extracting(Assembly.Step::id).endsWith("plug", "radiator");
        Assembly.Service out = assembly.services().get(2);
        assertThat(out.id()).isEqualTo("supply");
        assertThat(out.first()).containsExactly("radiator");
        assertThat(out.plugs()).containsExactly("plug");
        assertThat(assembly.steps().get(2).before()).containsExactly("radiator (hand)");
    }
}

package loopwright.workshop.assembly;

import static loopwright.workshop.assembly.Pieces.box;
import static loopwright.workshop.assembly.Pieces.part;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import org.junit.jupiter.api.Test;

/** Deadlocks made by hand, and what is none. */
class PuttingInTest {

    private static final int SIZE = 5;

    private static Piece piece(String id, SpaceBox... boxes) {
        return part(id, boxes);
    }

    private static Hall hall(Set<Face> open, SpaceBox... builtIn) {
        return Pieces.hall(open, SIZE, builtIn);
    }

    private static PuttingIn order(Hall hall, Piece... pieces) {
        return new PuttingIn(List.of(pieces), hall, List.of());
    }

    private static List<Integer> before(PuttingIn order, int piece) {
        return new LeastOut(order).before(piece).orElseThrow();
    }

    @Test
    void hooksThatHoldEachOtherAreNamed() {
        Reach flat = new Reach(0, 1);
        Hall narrow = new Hall(new Reach(0, 3), flat, new Reach(0, 2), Set.of(Face.LEFT), List.of());
        Piece a = piece("a", box(0, 1, 0, 1, 0, 1), box(2, 3, 0, 1, 1, 2));
        Piece b = piece("b", box(0, 1, 0, 1, 1, 2), box(2, 3, 0, 1, 0, 1));
        PuttingIn order = order(narrow, a, b);
        assertThat(order.order()).isEmpty();
        assertThat(order.deadlock()).containsExactly(0, 1);
        assertThat(new LeastOut(order).before(0)).isEmpty();
    }

    @Test
    void aThirdPieceBehindTheHooksIsNotBlamed() {
        Reach flat = new Reach(0, 1);
        Hall narrow = new Hall(new Reach(0, 6), flat, new Reach(0, 2), Set.of(Face.LEFT), List.of());
        Piece a = piece("a", box(0, 1, 0, 1, 0, 1), box(2, 3, 0, 1, 1, 2));
        Piece b = piece("b", box(0, 1, 0, 1, 1, 2), box(2, 3, 0, 1, 0, 1));
        Piece behind = piece("c", box(4, 5, 0, 1, 0, 2));
        PuttingIn order = order(narrow, behind, a, b);
        assertThat(order.deadlock()).containsExactly(1, 2);
    }

    @Test
    void aPlugBehindARadiatorIsPluggedBeforeIt() {
        Hall hall = hall(Set.of(Face.LEFT));
        SpaceBox plug = new SpaceBox("plugs", true, 0, new Reach(2, 3), new Reach(0, 5), new Reach(0, 5));
        Piece supply = Pieces.turn(Pieces.reaching(part("supply", box(3, 5, 0, 5, 0, 5)), plug), 9);
        Piece radiator = piece("radiator", box(0, 1, 0, 5, 0, 5));
        PuttingIn order = order(hall, supply, radiator);
        assertThat(order.order()).containsExactly(0, 1);
        assertThat(before(order, 0)).containsExactly(1);
        assertThat(before(order, 1)).isEmpty();
    }

    @Test
    void whatOnlyATiltCouldFreeBlocksNothing() {
        SpaceBox lip = box(0, 1, 0, 5, 0, 5);
        PuttingIn order = order(hall(Set.of(Face.LEFT), lip), piece("long", box(1, 2, 0, 5, 0, 5)));
        assertThat(order.unmet(0)).hasSize(1);
        assertThat(order.order()).containsExactly(0);
        assertThat(order.deadlock()).isEmpty();
    }
}

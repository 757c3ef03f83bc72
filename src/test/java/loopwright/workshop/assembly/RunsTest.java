package loopwright.workshop.assembly;

import static loopwright.workshop.assembly.Pieces.box;
import static loopwright.workshop.assembly.Pieces.carrying;
import static loopwright.workshop.assembly.Pieces.hall;
import static loopwright.workshop.assembly.Pieces.made;
import static loopwright.workshop.assembly.Pieces.part;
import static loopwright.workshop.assembly.Pieces.turn;
import static loopwright.workshop.assembly.Pieces.wet;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.workshop.assembly.Assembly.Service;
import loopwright.workshop.assembly.Piece.Body;
import loopwright.workshop.assembly.Piece.Kind;
import org.junit.jupiter.api.Test;

/** A pump and a block joined by a run of tube that passes before a dry card; only the left is open. */
class RunsTest {

    private static final int SIZE = 10;
    private static final Hall HALL = hall(Set.of(Face.LEFT), SIZE);

    private static Piece run(Kind kind) {
        return made(
                "run", new Piece.Traits(kind, true, 9), List.of(Body.inside("run", List.of(box(2, 3, 0, 10, 4, 6)))));
    }

    private static List<Piece> pieces(Kind kind) {
        return List.of(
                turn(carrying(wet(part("pump", box(4, 6, 0, 2, 4, 6))), "run"), 1),
                turn(carrying(wet(part("block", box(4, 6, 8, 10, 4, 6))), "run"), 1),
                turn(part("card", box(4, 9, 3, 7, 0, 10)), 2),
                run(kind));
    }

    private static Assembly assembly(Kind kind) {
        return Assembly.of(pieces(kind), HALL, List.of(), List.of());
    }

    private static Service service(Assembly assembly, String id) {
        return assembly.services().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRunGoesInAfterWhatItJoins() {
        for (Kind kind : List.of(Kind.SOFT_RUN, Kind.RIGID_RUN)) {
            assertThat(assembly(kind).steps())
                    .as(kind.name())
                    .extracting(Assembly.Step::id)
                    .containsExactly("pump", "block", "card", "run");
            Service pump = service(assembly(kind), "pump");
            assertThat(pump.tubes().undone()).containsExactly("run");
            assertThat(pump.drain()).isTrue();
        }
    }

    @Test
    void aRigidRunIsUndoneForWhatItCrosses() {
        Assembly assembly = assembly(Kind.RIGID_RUN);
        assertThat(assembly.steps().get(2).before()).containsExactly("run (way in)");
        Service card = service(assembly, "card");
        assertThat(card.first()).isEmpty();
        assertThat(card.tubes().undone()).containsExactly("run");
        assertThat(card.drain()).isTrue();
    }

    @Test
    void aSoftRunSwingsAside() {
        Assembly assembly = assembly(Kind.SOFT_RUN);
        assertThat(assembly.steps().get(2).before()).isEmpty();
        Service card = service(assembly, "card");
        assertThat(card.tubes().undone()).isEmpty();
        assertThat(card.tubes().aside()).containsExactly("run");
        assertThat(card.drain()).isFalse();
    }

    /** With the roof open the card leaves past the run: nothing has to swing. */
    @Test
    void aWayPastASoftRunIsTaken() {
        Hall open = hall(Set.of(Face.LEFT, Face.ROOF), SIZE);
        Service card = service(Assembly.of(pieces(Kind.SOFT_RUN), open, List.of(), List.of()), "card");
        assertThat(card.tubes().aside()).isEmpty();
    }

    /** The loop stays closed where there is a choice, even if more comes out. */
    @Test
    void twoDryPartsComeOutRatherThanAWetOne() {
        Hall both = hall(Set.of(Face.LEFT, Face.RIGHT), SIZE);
        Piece middle = part("middle", box(4, 5, 0, 10, 0, 10));
        Piece radiator = wet(part("radiator", box(0, 1, 0, 10, 0, 10)));
        Piece one = part("one", box(6, 7, 0, 10, 0, 10));
        Piece other = part("other", box(8, 9, 0, 10, 0, 10));
        Service out = service(Assembly.of(List.of(middle, radiator, one, other), both, List.of(), List.of()), "middle");
        assertThat(out.first()).containsExactly("other", "one");
        assertThat(out.drain()).isFalse();
    }

    /** A stack that lies beside the case on its tubes goes on after them; to take it away they are undone. */
    @Test
    void aStackWithItsPanelGoesOnAfterItsTubes() {
        Piece block = carrying(wet(part("block", box(4, 6, 8, 10, 4, 6))), "run");
        Piece door = turn(
                made(
                        "door",
                        new Piece.Traits(Kind.PART, false, 0),
                        List.of(Body.outside("radiator", List.of(box(-1, 0, 0, 10, 0, 10)), Face.LEFT))),
                0);
        Piece run = carrying(run(Kind.SOFT_RUN), "door");
        Piece memory = part("memory", box(8, 9, 0, 1, 0, 1));
        Assembly assembly = Assembly.of(List.of(door, block, run, memory), HALL, List.of(), List.of());
        assertThat(assembly.steps()).extracting(Assembly.Step::id).endsWith("door");
        Service dry = service(assembly, "memory");
        assertThat(dry.first()).containsExactly("door");
        assertThat(dry.tubes().aside()).containsExactly("run");
        assertThat(dry.drain()).isFalse();
        Service off = service(assembly, "door");
        assertThat(off.tubes().undone()).containsExactly("run");
        assertThat(off.drain()).isTrue();
    }
}

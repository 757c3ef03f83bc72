package loopwright.workshop.assembly;

import static loopwright.workshop.assembly.Pieces.box;
import static loopwright.workshop.assembly.Pieces.driver;
import static loopwright.workshop.assembly.Pieces.hall;
import static loopwright.workshop.assembly.Pieces.lid;
import static loopwright.workshop.assembly.Pieces.made;
import static loopwright.workshop.assembly.Pieces.part;
import static loopwright.workshop.assembly.Pieces.screw;
import static loopwright.workshop.assembly.Pieces.screwed;
import static loopwright.workshop.assembly.Pieces.turn;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.catalog.standard.Fastening.Driver;
import loopwright.workshop.assembly.Piece.Body;
import loopwright.workshop.assembly.Piece.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Screws and their drivers: known deadlocks made by hand, and limits to one hundredth from both sides. */
class DriverTest {

    private static final int SIZE = 20_000;
    private static final Set<Face> LEFT = Set.of(Face.LEFT);

    /** Shaft 30 mm and 8 across, hand 55 mm and 50 across. */
    private static final List<Driver> STUB = List.of(driver(3000, 800, 5500, 5000));

    private static PuttingIn order(Hall hall, Piece... pieces) {
        return new PuttingIn(List.of(pieces), hall, STUB);
    }

    @Test
    void aFanScrewUnderACoverIsDrivenBeforeTheCoverGoesOn() {
        Piece fan = turn(
                screwed(part("fan", box(5000, 9000, 0, 4000, 17_500, SIZE)), screw(5500, 500, SIZE, Face.ROOF, 3000)),
                9);
        Piece cover = lid("cover", box(5000, 9000, 0, 4000, SIZE + 3000, SIZE + 3150));
        Assembly assembly = Assembly.of(List.of(cover, fan), hall(LEFT, SIZE), STUB, List.of());
        assertThat(assembly.steps()).extracting(Assembly.Step::id).containsExactly("fan", "cover");
        assertThat(assembly.steps().get(0).before()).containsExactly("cover (driver)");
        assertThat(assembly.services().get(1).first()).containsExactly("cover");
        assertThat(assembly.services().get(0).first()).isEmpty();
    }

    /** Each stands where the hand must be that drives the other's screw; the third stands behind and is not to blame. */
    @Test
    void twoStacksThatHideEachOthersScrewsAreNamed() {
        Piece roof = screwed(
                part("roof stack", box(0, SIZE, 8000, 12_000, 16_000, SIZE)),
                screw(500, 10_000, 16_000, Face.FLOOR, 1000));
        Piece floor = screwed(
                part("floor stack", box(0, SIZE, 8000, 12_000, 0, 4000)), screw(500, 10_000, 4000, Face.ROOF, 1000));
        Piece behind = part("behind", box(15_000, SIZE, 0, 2000, 0, 2000));
        PuttingIn tall = order(hall(LEFT, SIZE), behind, roof, floor);
        assertThat(tall.deadlock()).isEmpty();
        Piece lower = screwed(
                part("roof stack", box(0, SIZE, 8000, 12_000, 11_000, SIZE)),
                screw(500, 10_000, 11_000, Face.FLOOR, 1000));
        PuttingIn low = order(hall(LEFT, SIZE), behind, lower, floor);
        assertThat(low.order()).containsExactly(0);
        assertThat(low.deadlock()).containsExactly(1, 2);
    }

    @Test
    void aSharedBoltFreesTwo() {
        Piece stack = screwed(
                made(
                        "stack",
                        new Piece.Traits(Kind.PART, true, 0),
                        List.of(
                                Body.inside("radiator", List.of(box(5000, 9000, 0, 4000, 17_000, SIZE))),
                                Body.outside(
                                        "fans in the cover",
                                        List.of(box(5000, 9000, 0, 4000, SIZE, SIZE + 2500)),
                                        Face.ROOF))),
                screw(5500, 500, SIZE + 2500, Face.ROOF, 3000));
        Piece beside = part("beside", box(0, 4000, 0, SIZE, 0, SIZE));
        Piece cover = lid("cover", box(4800, 9200, 0, 4200, SIZE + 3000, SIZE + 3150));
        PuttingIn order = order(hall(LEFT, SIZE), stack, beside, cover);
        assertThat(order.leaves(0, 0b111)).isFalse();
        assertThat(order.leaves(0, 0b011)).as("the radiator is blocked").isFalse();
        assertThat(order.leaves(0, 0b101)).as("the fans are blocked").isFalse();
        assertThat(order.leaves(0, 0b001)).isTrue();
        Assembly.Service out = new Services(order).all().get(0);
        assertThat(out.first()).containsExactlyInAnyOrder("beside", "cover");
        assertThat(out.together()).containsExactly("radiator", "fans in the cover");
        assertThat(out.drain()).isTrue();
    }

    /** Half the shaft's 8 mm from the screw's axis at 100: the neighbour's face may lie at 104, not at 103.99. */
    @ParameterizedTest
    @CsvSource({"10400,true", "10399,false"})
    void aShaftPassesANeighbourToOneHundredth(int face, boolean free) {
        Piece board = screwed(
                part("board", box(19_000, SIZE, 0, SIZE, 0, SIZE)), screw(19_000, 10_000, 10_000, Face.LEFT, 600));
        Piece by = part("by", box(17_000, 18_500, face, 12_000, 0, SIZE));
        assertThat(order(hall(LEFT, SIZE), board, by)
                        .met(order(hall(LEFT, SIZE), board, by).needs(0).subList(2, 3), 0b11))
                .isEqualTo(free);
    }

    /** The hand's 50 mm: the neighbour at its side may come to 25 mm from the axis. */
    @ParameterizedTest
    @CsvSource({"12500,true", "12499,false"})
    void aHandPassesANeighbourToOneHundredth(int face, boolean free) {
        Piece board = screwed(
                part("board", box(19_000, SIZE, 0, SIZE, 0, SIZE)), screw(19_000, 10_000, 10_000, Face.LEFT, 600));
        Piece by = part("by", box(9000, 13_000, face, 13_000, 0, SIZE));
        PuttingIn order = order(hall(LEFT, SIZE), board, by);
        assertThat(order.met(order.needs(0).subList(2, 3), 0b11)).isEqualTo(free);
    }

    /** Shaft 30, screw 6, hand 55: 91 mm from the head at 100 to the floor's side of the hand, which is at 9. */
    @ParameterizedTest
    @CsvSource({"900,true", "901,false"})
    void aDriverNeedsItsLengthAndTheScrews(int top, boolean free) {
        Piece hung = screwed(
                part("hung", box(0, 4000, 0, 4000, 10_000, 12_000)), screw(2000, 3000, 10_000, Face.FLOOR, 600));
        Piece below = part("below", box(0, SIZE, 0, SIZE, 0, top));
        PuttingIn order = order(hall(LEFT, SIZE), hung, below);
        assertThat(order.leaves(0, 0b11)).isEqualTo(free);
    }

    /** The same against the floor itself: nothing can be taken out there, so it is named and blocks nothing. */
    @ParameterizedTest
    @CsvSource({"9100,0", "9099,1"})
    void aWallInTheWayIsNamed(int head, int unmet) {
        Piece hung =
                screwed(part("hung", box(0, 4000, 0, 4000, head, 12_000)), screw(2000, 3000, head, Face.FLOOR, 600));
        PuttingIn order = order(hall(LEFT, SIZE), hung);
        assertThat(order.unmet(0)).hasSize(unmet);
        assertThat(order.order()).containsExactly(0);
        assertThat(Assembly.of(List.of(hung), hall(LEFT, SIZE), STUB, List.of()).notes())
                .hasSize(unmet);
    }

    /** A hand that is beyond an open side is in no wall: a long driver reaches a screw beside the rear wall. */
    @Test
    void aHandOutsideAnOpenSideIsInNoWall() {
        Piece board =
                screwed(part("board", box(5000, 5200, 0, SIZE, 0, SIZE)), screw(5000, 19_000, 10_000, Face.LEFT, 600));
        PuttingIn stub = order(hall(LEFT, SIZE), board);
        assertThat(stub.unmet(0)).as("the hand would be in the rear wall").hasSize(1);
        PuttingIn longer =
                new PuttingIn(List.of(board), hall(LEFT, SIZE), List.of(STUB.get(0), driver(5000, 800, 11_000, 6000)));
        assertThat(longer.unmet(0)).isEmpty();
    }

    /** Fans with screws of their own come out in place where a driver gets to them, else with the whole stack. */
    @ParameterizedTest
    @CsvSource({"4000,''", "9000,stack"})
    void innerFansComeOutInPlaceWhereADriverGetsThere(int top, String first) {
        Piece stack = made(
                "stack",
                new Piece.Traits(Kind.PART, true, 0),
                List.of(
                        Body.inside("radiator", List.of(box(0, 4000, 0, 4000, 17_000, SIZE))),
                        Pieces.layer(
                                "inner fans",
                                box(0, 4000, 0, 4000, 14_000, 17_000),
                                screw(500, 3000, 14_000, Face.FLOOR, 600))));
        Hall hall = hall(EnumSet.of(Face.LEFT), SIZE, box(0, SIZE, 0, SIZE, 0, top));
        Assembly.Service fans =
                Assembly.of(List.of(stack), hall, STUB, List.of()).services().get(1);
        assertThat(fans.title()).isEqualTo("inner fans");
        assertThat(String.join(", ", fans.first())).isEqualTo(first);
        assertThat(fans.drain()).isEqualTo(!first.isEmpty());
    }

    @Test
    void withoutDriversNoScrewIsLookedAt() {
        Piece hung = screwed(part("hung", box(0, 4000, 0, 4000, 0, 12_000)), screw(2000, 3000, 0, Face.FLOOR, 600));
        PuttingIn order = new PuttingIn(List.of(hung), hall(LEFT, SIZE), List.of());
        assertThat(order.needs(0)).hasSize(2);
    }
}

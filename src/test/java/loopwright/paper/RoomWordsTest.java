package loopwright.paper;

import static loopwright.testing.Mm.box;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.span;
import static loopwright.testing.SmallMods.coverOverRings;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Radiator;
import loopwright.fit.Arrangement;
import loopwright.fit.FoundLayout;
import loopwright.fit.Growth;
import loopwright.fit.PortEnd;
import loopwright.fit.RoomLeft;
import loopwright.fit.Shape;
import loopwright.testing.Answers;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** The room a layout leaves, by hand and word for word; common practice, no source. */
class RoomWordsTest {

    private static final Spot OVER_MEMORY = new Spot(250, 100);

    /** 60 from the roof down to the memory, over which a stack of 25 + 30 hangs: 5 are left, for either. */
    private static SmallCase roof() {
        return new SmallCase(400, SmallCase.BOARD_TOP_MM + 30 + 60)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", OVER_MEMORY)))
                .with(SmallParts.radiator("radiator", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)));
    }

    /** A front of 1x120 that faces the card: the radiator's inner face is 55 from the front wall. */
    private static SmallCase front(double depthMm) {
        return new SmallCase(depthMm, 300)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("1x120", new Spot(85, 170))))
                .with(SmallParts.radiator("radiator", "1x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)))
                .with(SmallParts.card("card", mm(267), 150));
    }

    private static List<Growth> growths(SmallCase question, Predicate<Shape> shape) {
        Answers answers = new Answers(question);
        FoundLayout found = answers.matching(shape).get(0);
        return new RoomLeft(question.fitCase())
                .of(answers.witness(found.layout(), found.needed().get(0)));
    }

    private static List<String> sentences(SmallCase question, Predicate<Shape> shape) {
        return growths(question, shape).stream().map(RoomWords::sentence).toList();
    }

    private static boolean isPush(Shape shape) {
        return shape.arrangement() == Arrangement.PUSH;
    }

    /** The supply's plug room of 40 ends at the rear wall when it is 400 − 20 − 40 long. */
    @Test
    void fiveMillimetresBetweenStackAndMemoryAreLeftForEither() {
        assertThat(RoomWords.table(growths(roof(), RoomWordsTest::isPush)).lines(""))
                .containsExactly(
                        "room left for            now, mm  up to, mm  more, mm  stopped by",
                        "card length                  150        400       250  front wall",
                        "supply length                140        340       200  rear wall",
                        "memory height                 30         35         5  roof radiator",
                        "roof radiator thickness       30         35         5  memory");
    }

    /** 330 − 55 − 267 = 8; the memory stands on a board at 20 under a roof at 300. */
    @Test
    void eightMillimetresBetweenCardAndFrontStackAreLeftForEither() {
        assertThat(sentences(front(330), RoomWordsTest::isPush))
                .containsExactly(
                        "card length: 267 mm, up to 275 mm; stopped by front radiator",
                        "supply length: 140 mm, up to 270 mm; stopped by rear wall",
                        "memory height: 30 mm, up to 280 mm; stopped by roof",
                        "front radiator thickness: 30 mm, up to 38 mm; stopped by card");
    }

    /** In a cover 40 high inside, whose perforated skin wants 5 over the radiator. */
    @Test
    void theRaisedCoverStopsWhatIsInIt() {
        SmallCase question = roof().with(SmallParts.cover("cover", "3x120", 40, 0.6))
                .with(coverOverRings("raise", "roof", "cover", OVER_MEMORY));

        assertThat(sentences(question, s -> s.arrangement() == Arrangement.COVER_RADIATOR))
                .contains("roof radiator thickness: 30 mm, up to 35 mm; stopped by raised cover");
    }

    /**
     * The front radiator's upper tank ends 300 − 165 = 135 under the roof, and only the roof radiator's tank hangs over
     * it: with the fans below, all of the 135 are its own; with the fans above, 25 less.
     */
    @Test
    void theBestArrangementOfAnEmptyMountIsTold() {
        SmallCase question = front(330).mount(Face.ROOF, mount("roof", Axis.Y, seat("1x120", new Spot(130, 100))));

        assertThat(sentences(question, s -> isPush(s)))
                .contains("roof 1x120, fans 25 below, ports front: up to 135 mm; stopped by front radiator");
    }

    /** A shelf 50 over the floor leaves no room for 25 and the catalogue's thinnest radiator, 30. */
    @Test
    void whatLeavesNoRoomOnAnEmptyMountIsNamed() {
        SmallCase question = front(330)
                .mount(Face.FLOOR, mount("floor", Axis.Y, seat("1x120", new Spot(165, 400))))
                .obstruction("shelf", box(span(350, 450), span(100, 200), span(50, 60)));

        assertThat(sentences(question, s -> isPush(s))).contains("floor 1x120: none; stopped by shelf");
    }

    /**
     * The room over the last 30 of a card, 20 high, meets a beam between 280 and 300 from the rear as soon as the card is
     * longer than 280. From 330 on it would be past the beam, but the card has to grow through it.
     */
    @Test
    void roomBeyondSomethingInTheWayDoesNotCount() {
        GraphicsCard plain = SmallParts.card("card", mm(267), 150);
        GraphicsCard.Body body = new GraphicsCard.Body(mm(267), mm(10), mm(40), mm(20), mm(30));
        GraphicsCard card = new GraphicsCard(
                "card", "card", Optional.empty(), plain.buy(), plain.cooling(), body, plain.power(), 100);
        SmallCase question =
                front(500).with(card).obstruction("beam", box(span(170, 190), span(200, 220), span(70, 75)));

        assertThat(sentences(question, RoomWordsTest::isPush))
                .contains("card length: 267 mm, up to 280 mm; stopped by beam");
    }

    /**
     * A port out of the tank's end, of radius 12, sits at half the thickness under 25 of fans; a bar ends 60 under the
     * roof. So half the thickness, rounded down to the hundredth, may be 23: 46.01 goes.
     */
    @Test
    void aPortAtMidThicknessMovesByHalf() {
        Radiator plain = SmallParts.radiator("radiator", "1x120", mm(30));
        Radiator.Port end = new Radiator.Port(Radiator.PortFace.END, mm(10), mm(0));
        Radiator radiator = new Radiator(
                "radiator",
                "radiator",
                Optional.empty(),
                plain.buy(),
                plain.pattern(),
                plain.body(),
                new Radiator.Ports(List.of(end), Radiator.Metal.COPPER),
                plain.core());
        SmallCase question = new SmallCase(400, 300)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("1x120", new Spot(250, 400))))
                .with(radiator)
                .with(SmallParts.fan("fan", 120, mm(25)))
                .obstruction("bar", box(span(390, 410), span(140, 165), span(0, 240)));

        assertThat(sentences(question, s -> isPush(s) && s.portEnd() == PortEnd.LOW))
                .contains("roof radiator thickness: 30 mm, up to 46.01 mm; stopped by bar");
    }
}

package loopwright.plumbing;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FoundLayout;
import loopwright.fit.StandingBodies;
import loopwright.fit.Witness;
import loopwright.geometry.SpaceBox;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Where;
import loopwright.testing.Answers;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** Where ports stand, against the room that fit keeps for them and against boxes worked out by hand. */
final class PlacedPortsTest {

    private static SmallCase on(Face face, Axis lengthwise) {
        return new SmallCase(400, face == Face.FRONT ? 300 : 220)
                .mount(
                        face,
                        mount(
                                "here",
                                lengthwise,
                                seat(
                                        face == Face.FRONT ? "1x120" : "2x120",
                                        face == Face.FRONT ? new Spot(150, 170) : new Spot(200, 100))))
                .with(withPorts(SmallParts.radiator("thin", face == Face.FRONT ? "1x120" : "2x120", mm(30))))
                .with(SmallParts.fan("fan", 120, mm(25)));
    }

    /** Two in the broad face and one out of the end. */
    private static Radiator withPorts(Radiator plain) {
        List<Radiator.Port> ports = List.of(
                new Radiator.Port(Radiator.PortFace.BROAD, mm(8), mm(-17)),
                new Radiator.Port(Radiator.PortFace.BROAD, mm(8), mm(23)),
                new Radiator.Port(Radiator.PortFace.END, mm(0), mm(5)));
        return new Radiator(
                plain.id(),
                plain.title(),
                plain.variantOf(),
                plain.buy(),
                plain.pattern(),
                plain.body(),
                new Radiator.Ports(ports, plain.ports().metal()),
                plain.core());
    }

    /** Each port is in the middle of the near face of the room that fit keeps over it, and looks into that room. */
    @Test
    void radiatorPortsLookIntoTheRoomThatIsKeptForThem() {
        int seen = 0;
        for (Face face : new Face[] {Face.FRONT, Face.ROOF}) {
            SmallCase question = on(face, face == Face.FRONT ? Axis.Z : Axis.Y);
            Answers answers = new Answers(question);
            Radiator radiator = question.fitCase().catalog().all(Radiator.class).get(0);
            for (FoundLayout found : answers.all()) {
                Witness witness = answers.witness(found.layout(), found.needed().get(0));
                List<Port> ports = new RadiatorPorts(witness.stacks().get(0), radiator).all("here radiator");
                List<SpaceBox> rooms = StandingBodies.of(question.fitCase(), witness).stream()
                        .flatMap(b -> b.boxes().stream())
                        .filter(b -> b.what().equals("here radiator port"))
                        .toList();
                assertThat(rooms).hasSameSizeAs(ports);
                for (int i = 0; i < ports.size(); i++) {
                    assertThat(ports.get(i).at())
                            .as(found.layout().text())
                            .isEqualTo(nearMiddle(rooms.get(i), ports.get(i).out()));
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThan(10);
    }

    private static Where nearMiddle(SpaceBox room, Heading out) {
        Where middle = new Where(
                (room.x().from() + room.x().to()) / 2,
                (room.y().from() + room.y().to()) / 2,
                (room.z().from() + room.z().to()) / 2);
        SpaceBox.Reach reach = room.along(out.axis());
        return middle.with(out.axis(), out.sign() > 0 ? reach.from() : reach.to());
    }

    /** A body 100 long, 60 wide, 40 high with its length down, its width to the rear and its height to the right. */
    @Test
    void aPartsOwnFrameStandsAsItsPoseSays() {
        Solid box = new Solid("pump", new Where(800, 5800, 23_200), new Where(4800, 11_800, 33_200));
        PartFrame frame = new PartFrame(box, Heading.DOWN, Heading.REAR, Heading.RIGHT);
        assertThat(frame.at(0, 0, 0)).isEqualTo(new Where(800, 5800, 33_200));
        assertThat(frame.at(10_000, 6000, 4000)).isEqualTo(new Where(4800, 11_800, 23_200));
        List<Port> ports = AssumedPorts.onFarEnd("pump", frame);
        assertThat(ports)
                .extracting(Port::at)
                .containsExactly(new Where(2800, 7800, 23_200), new Where(2800, 9800, 23_200));
        assertThat(ports).extracting(Port::out).containsOnly(Heading.DOWN);
        assertThat(ports).allMatch(Port::assumed);
    }

    @Test
    void aBlocksAssumedPortsAreOnItsTop() {
        Solid box = new Solid("block", new Where(15_000, 20_000, 30_000), new Where(17_400, 27_600, 37_600));
        PartFrame frame = new PartFrame(box, Heading.DOWN, Heading.FRONT, Heading.LEFT);
        assertThat(AssumedPorts.onTop("block", frame))
                .extracting(Port::at)
                .containsExactly(new Where(15_000, 23_800, 37_600 - 2533), new Where(15_000, 23_800, 37_600 - 5066));
    }

    @Test
    void aCardsAssumedPortsAreInItsTopRoom() {
        Solid box = new Solid("card", new Where(4800, 15_100, 20_400), new Where(17_800, 35_600, 22_800));
        PartFrame frame = new PartFrame(box, Heading.FRONT, Heading.DOWN, Heading.LEFT);
        List<Port> ports = AssumedPorts.onTopEdge("card", frame, 6000);
        assertThat(ports)
                .extracting(Port::at)
                .containsExactly(
                        new Where(4800, 35_600 - 14_500 - 2000, 21_600),
                        new Where(4800, 35_600 - 14_500 - 4000, 21_600));
    }
}

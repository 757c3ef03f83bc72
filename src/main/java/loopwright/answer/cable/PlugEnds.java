package loopwright.answer.cable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.answer.Inspection;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Supply;
import loopwright.fit.Witness;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.power.cable.PointHmm;

/** Where the plugs of a build sit: on the supply, the board, the card, the drives, the pump. */
final class PlugEnds {

    private final Inspection inspection;
    private final Chosen chosen;

    PlugEnds(Inspection inspection) {
        this.inspection = inspection;
        this.chosen = inspection.build().chosen();
    }

    /** The middle of the supply's face with the plugs. */
    PlugEnd supply(Plug plug) {
        return farEnd(plug, "supply", place("supply").orElseThrow(), supply().body());
    }

    Supply supply() {
        return chosen.the(Role.SUPPLY, Supply.class);
    }

    /** Everything that wants a cable, in the order in which it is told. */
    List<PlugEnd> wanted() {
        List<PlugEnd> out = new ArrayList<>();
        Board board = chosen.the(Role.BOARD, Board.class);
        out.addAll(onBoard(board, Plug.MAIN_24, Integer.MAX_VALUE, "board"));
        int processors = chosen.the(Role.PROCESSOR, Processor.class).heat().processorPlugs();
        out.addAll(onBoard(board, Plug.PROCESSOR_8, processors, "processor"));
        GraphicsCard card = chosen.the(Role.CARD, GraphicsCard.class);
        addCard(out, board, card, Plug.CARD_8, card.power().eightPinPlugs());
        addCard(out, board, card, Plug.CARD_16, card.power().sixteenPinPlugs());
        List<Drive> drives = inspection.fitCase().placedDrives();
        for (int i = 0; i < drives.size(); i++) {
            String name = "drive " + (i + 1);
            SizeMm body = drives.get(i).body();
            place(name).ifPresent(p -> out.add(farEnd(Plug.SATA, name, p, body)));
        }
        Pump pump = chosen.the(Role.PUMP, Pump.class);
        pump.feed()
                .map(Pump.Feed::plug)
                .filter(p -> p == Plug.SATA || p == Plug.PERIPHERAL_4)
                .ifPresent(p -> place("pump").ifPresent(at -> out.add(farEnd(p, "pump", at, pump.body()))));
        return List.copyOf(out);
    }

    /** Where the drives' data leads start on the board, if it says so. */
    Optional<PlugEnd> driveSockets() {
        return onBoard(chosen.the(Role.BOARD, Board.class), Plug.SATA, 1, "board").stream()
                .findFirst();
    }

    private void addCard(List<PlugEnd> out, Board board, GraphicsCard card, Plug plug, int count) {
        for (int i = 0; i < count; i++) {
            out.add(new PlugEnd(plug, count == 1 ? "card" : "card " + (i + 1), cardTop(board, card), bay().height()));
        }
    }

    /** The middle of the card's top edge at its far end. */
    PointHmm cardTop(Board board, GraphicsCard card) {
        return PlugEnd.point(
                bay(),
                board.sockets().slotLengthMm().valueHmm()
                        + card.body().thicknessMm().valueHmm() / 2,
                card.body().lengthMm().valueHmm(),
                card.body().heightMm().valueHmm());
    }

    /** The board bay's pose. */
    Pose bay() {
        return inspection.fitCase().chassis().inside().board().pose();
    }

    private List<PlugEnd> onBoard(Board board, Plug plug, int most, String name) {
        List<Board.Zone> zones = board.zones().stream()
                .filter(z -> !z.room() && z.plug().equals(Optional.of(plug)))
                .limit(most)
                .toList();
        List<PlugEnd> out = new ArrayList<>();
        for (int i = 0; i < zones.size(); i++) {
            Board.Zone zone = zones.get(i);
            PointHmm top = PlugEnd.point(
                    bay(),
                    middle(zone.lengthMm()),
                    middle(zone.widthMm()),
                    zone.heightMm().to().valueHmm());
            out.add(new PlugEnd(plug, zones.size() == 1 ? name : name + " " + (i + 1), top, bay().height()));
        }
        return out;
    }

    private static int middle(Span span) {
        return (span.from().valueHmm() + span.to().valueHmm()) / 2;
    }

    private static PlugEnd farEnd(Plug plug, String name, Place place, SizeMm body) {
        Pose pose = place.pose();
        Heading out = pose.length();
        PointHmm face = PlugEnd.point(
                pose,
                body.lengthMm().valueHmm(),
                body.widthMm().valueHmm() / 2,
                body.heightMm().valueHmm() / 2);
        return new PlugEnd(plug, name, face, out);
    }

    /** The place that something is in. */
    Optional<Place> place(String what) {
        Optional<String> id = inspection.witness().places().stream()
                .filter(p -> p.what().equals(what))
                .map(Witness.InPlace::place)
                .findFirst();
        return inspection.fitCase().chassis().inside().places().stream()
                .filter(p -> id.equals(Optional.of(p.id())))
                .findFirst();
    }
}

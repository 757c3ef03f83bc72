package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.basis.Span;
import loopwright.catalog.part.Block;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.standard.Standards.BoardOutline;
import loopwright.geometry.Body;
import loopwright.geometry.BodyBox;
import loopwright.geometry.BodyBox.Fill;
import loopwright.geometry.Edges;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;

/** The boxes of everything that is not a stack: what is built in, what is on the board, what is in a place. */
final class PartBodies {

    private PartBodies() {}

    /**
     * A body given as boxes in the chassis frame.
     *
     * @param address of the item in the catalogue that lists the boxes
     */
    static Body fixed(String id, String title, String address, List<Box> boxes) {
        List<BodyBox> out = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            String name = address + ".boxes." + (i + 1);
            out.add(new BodyBox(
                    title,
                    Fill.SOLID,
                    Sum.ZERO,
                    edges(name + ".x_mm", box.xMm()),
                    edges(name + ".y_mm", box.yMm()),
                    edges(name + ".z_mm", box.zMm())));
        }
        return new Body(id, title, out);
    }

    /**
     * The board and what stands on it.
     *
     * @param outline number of its outline among the standard's, from 0
     */
    static Body board(Board board, int outline, Spot spot, Catalog catalog) {
        BoardOutline size = catalog.standards().boards().get(outline);
        String name = "standards.boards." + (outline + 1);
        List<BodyBox> boxes = new ArrayList<>();
        boxes.add(placed(
                spot,
                "board",
                Fill.SOLID,
                new Edges(Sum.ZERO, Sum.ZERO.plus(name + ".length_mm", size.lengthMm())),
                new Edges(Sum.ZERO, Sum.ZERO.plus(name + ".width_mm", size.widthMm())),
                new Edges(
                        Sum.ZERO.minus(
                                "practice.room.board_thickness_mm",
                                catalog.practice().room().boardThicknessMm()),
                        Sum.ZERO)));
        for (Board.Zone zone : board.zones()) {
            String zoneName = board.id() + ".zones." + zone.id();
            boxes.add(placed(
                    spot,
                    zone.id().replace('-', ' '),
                    zone.room() ? Fill.ROOM : Fill.SOLID,
                    zone(zone, zoneName + ".length_mm", zone.lengthMm()),
                    zone(zone, zoneName + ".width_mm", zone.widthMm()),
                    zone(zone, zoneName + ".height_mm", zone.heightMm())));
        }
        return new Body("board", board.title(), boxes);
    }

    private static Edges zone(Board.Zone zone, String name, Span span) {
        return zone.room()
                ? edges(name, new Span(Allowance.of(span.from()), Allowance.of(span.to())))
                : edges(name, span);
    }

    static Body memory(Board board, Memory memory, Spot spot) {
        Board.MemoryBank bank = board.sockets().memory();
        String name = board.id() + ".sockets.memory";
        BodyBox box = placed(
                spot,
                "memory",
                Fill.SOLID,
                edges(name + ".length_mm", bank.lengthMm()),
                edges(name + ".width_mm", bank.widthMm()),
                new Edges(Sum.ZERO, Sum.ZERO.plus(memory.id() + ".height_mm", memory.heightMm())));
        return new Body("memory", memory.title(), List.of(box));
    }

    static Body block(Board board, Block block, Spot spot) {
        String name = block.id() + ".body";
        String socket = board.id() + ".sockets.processor";
        Edges length = around(
                Sum.ZERO.plus(socket + "_length_mm", board.sockets().processorLengthMm()),
                name + ".length_mm",
                block.body().lengthMm());
        Edges width = around(
                Sum.ZERO.plus(socket + "_width_mm", board.sockets().processorWidthMm()),
                name + ".width_mm",
                block.body().widthMm());
        Sum top = Sum.ZERO.plus(name + ".height_mm", block.body().heightMm());
        Sum room = top.plus(block.id() + ".port_room_mm", Allowance.of(block.portRoomMm()));
        return new Body(
                "block",
                block.title(),
                List.of(
                        placed(spot, "processor block", Fill.SOLID, length, width, new Edges(Sum.ZERO, top)),
                        placed(spot, "processor block ports", Fill.ROOM, length, width, new Edges(top, room))));
    }

    static Body card(Board board, GraphicsCard card, Spot spot) {
        String name = card.id() + ".body";
        GraphicsCard.Body size = card.body();
        Sum slot = Sum.ZERO.plus(
                board.id() + ".sockets.slot_length_mm", board.sockets().slotLengthMm());
        Edges length = new Edges(slot, slot.plus(name + ".thickness_mm", size.thicknessMm()));
        Sum end = Sum.ZERO.plus(name + ".length_mm", size.lengthMm());
        Sum top = Sum.ZERO.plus(name + ".height_mm", size.heightMm());
        List<BodyBox> boxes = new ArrayList<>();
        boxes.add(placed(spot, "card", Fill.SOLID, length, new Edges(Sum.ZERO, end), new Edges(Sum.ZERO, top)));
        if (size.topRoomMm().isUnknown() || size.topRoomMm().valueHmm() > 0) {
            Edges width = new Edges(end.minus(name + ".top_room_length_mm", Allowance.of(size.topRoomLengthMm())), end);
            Edges height = new Edges(top, top.plus(name + ".top_room_mm", Allowance.of(size.topRoomMm())));
            boxes.add(placed(spot, "card plugs or ports", Fill.ROOM, length, width, height));
        }
        return new Body("card", card.title(), boxes);
    }

    /**
     * A part in a place: its body, and room beyond the far end of its length.
     *
     * @param role the body's id, and what its box is called
     * @param item what its dimensions' names start with: the part's id, unless several of it stand in the case
     */
    static Body inPlace(String role, String title, String item, Room room, Spot spot) {
        String name = item + ".body";
        Sum far = Sum.ZERO.plus(name + ".length_mm", room.body().lengthMm());
        Edges width = new Edges(
                Sum.ZERO, Sum.ZERO.plus(name + ".width_mm", room.body().widthMm()));
        Edges height = new Edges(
                Sum.ZERO, Sum.ZERO.plus(name + ".height_mm", room.body().heightMm()));
        Edges beyond = new Edges(far, far.plus(item + "." + room.field(), Allowance.of(room.beyond())));
        String what = role.replaceAll(":.*", "");
        return new Body(
                role,
                title,
                List.of(
                        placed(spot, what, Fill.SOLID, new Edges(Sum.ZERO, far), width, height),
                        placed(spot, what + " " + room.what(), Fill.ROOM, beyond, width, height)));
    }

    /**
     * A body's size and the room beyond its length, with what that room is for.
     *
     * @param field where the part's file has that room
     */
    record Room(SizeMm body, String what, String field, Dimension beyond) {}

    private static Edges around(Sum centre, String name, Dimension whole) {
        return new Edges(centre.plusHalves(-1, name, whole), centre.plusHalves(1, name, whole));
    }

    private static Edges edges(String name, Span span) {
        return new Edges(Sum.ZERO.plus(name + ".from", span.from()), Sum.ZERO.plus(name + ".to", span.to()));
    }

    private static BodyBox placed(Spot spot, String what, Fill fill, Edges length, Edges width, Edges height) {
        return new BodyBox(
                what,
                fill,
                Sum.ZERO,
                along(Axis.X, spot, length, width, height),
                along(Axis.Y, spot, length, width, height),
                along(Axis.Z, spot, length, width, height));
    }

    private static Edges along(Axis axis, Spot spot, Edges length, Edges width, Edges height) {
        Pose pose = spot.pose();
        Sum corner = Sum.ZERO.plus(
                spot.corner() + "." + axis.name().toLowerCase(Locale.ROOT) + "_mm",
                pose.corner().along(axis));
        if (pose.length().axis() == axis) {
            return turned(corner, pose.length(), length);
        }
        return pose.width().axis() == axis
                ? turned(corner, pose.width(), width)
                : turned(corner, pose.height(), height);
    }

    private static Edges turned(Sum corner, Heading heading, Edges local) {
        Sum a = corner.plus(heading.sign(), local.from());
        Sum b = corner.plus(heading.sign(), local.to());
        return heading.sign() > 0 ? new Edges(a, b) : new Edges(b, a);
    }
}

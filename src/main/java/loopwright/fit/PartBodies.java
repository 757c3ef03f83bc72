package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import loopwright.catalog.standard.Practice;
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

    /** A body given as boxes in the chassis frame. */
    static Body fixed(String id, String title, List<Box> boxes) {
        List<BodyBox> out = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            String name = id + "." + (i + 1);
            out.add(new BodyBox(
                    title,
                    Fill.SOLID,
                    Sum.ZERO,
                    edges(name + ".x", box.xMm()),
                    edges(name + ".y", box.yMm()),
                    edges(name + ".z", box.zMm())));
        }
        return new Body(id, title, out);
    }

    static Body board(Board board, BoardOutline outline, Spot spot, Practice practice) {
        String name = "board." + board.id();
        List<BodyBox> boxes = new ArrayList<>();
        boxes.add(placed(
                spot,
                "board",
                Fill.SOLID,
                new Edges(Sum.ZERO, Sum.ZERO.plus(name + ".length", outline.lengthMm())),
                new Edges(Sum.ZERO, Sum.ZERO.plus(name + ".width", outline.widthMm())),
                new Edges(
                        Sum.ZERO.minus(
                                "practice.board-thickness", practice.room().boardThicknessMm()),
                        Sum.ZERO)));
        for (Board.Zone zone : board.zones()) {
            String zoneName = name + "." + zone.id();
            boxes.add(placed(
                    spot,
                    zone.id().replace('-', ' '),
                    zone.room() ? Fill.ROOM : Fill.SOLID,
                    edges(zoneName + ".length", zone.lengthMm()),
                    edges(zoneName + ".width", zone.widthMm()),
                    edges(zoneName + ".height", zone.heightMm())));
        }
        return new Body("board", board.title(), boxes);
    }

    static Body memory(Board board, Memory memory, Spot spot) {
        Board.MemoryBank bank = board.sockets().memory();
        String name = "board." + board.id() + ".memory-bank";
        BodyBox box = placed(
                spot,
                "memory",
                Fill.SOLID,
                edges(name + ".length", bank.lengthMm()),
                edges(name + ".width", bank.widthMm()),
                new Edges(Sum.ZERO, Sum.ZERO.plus("memory." + memory.id() + ".height", memory.heightMm())));
        return new Body("memory", memory.title(), List.of(box));
    }

    static Body block(Board board, Block block, Spot spot) {
        String name = "block." + block.id();
        String socket = "board." + board.id() + ".processor";
        Edges length = around(
                Sum.ZERO.plus(socket + ".length", board.sockets().processorLengthMm()),
                name + ".length",
                block.body().lengthMm());
        Edges width = around(
                Sum.ZERO.plus(socket + ".width", board.sockets().processorWidthMm()),
                name + ".width",
                block.body().widthMm());
        Sum top = Sum.ZERO.plus(name + ".height", block.body().heightMm());
        Sum room = top.plus(name + ".port-room", block.portRoomMm());
        return new Body(
                "block",
                block.title(),
                List.of(
                        placed(spot, "processor block", Fill.SOLID, length, width, new Edges(Sum.ZERO, top)),
                        placed(spot, "processor block ports", Fill.ROOM, length, width, new Edges(top, room))));
    }

    static Body card(Board board, GraphicsCard card, Spot spot) {
        String name = "card." + card.id();
        GraphicsCard.Body size = card.body();
        Sum slot =
                Sum.ZERO.plus("board." + board.id() + ".slot", board.sockets().slotLengthMm());
        Edges length = new Edges(slot, slot.plus(name + ".thickness", size.thicknessMm()));
        Sum end = Sum.ZERO.plus(name + ".length", size.lengthMm());
        Sum top = Sum.ZERO.plus(name + ".height", size.heightMm());
        List<BodyBox> boxes = new ArrayList<>();
        boxes.add(placed(spot, "card", Fill.SOLID, length, new Edges(Sum.ZERO, end), new Edges(Sum.ZERO, top)));
        if (size.topRoomMm().isUnknown() || size.topRoomMm().valueHmm() > 0) {
            Edges width = new Edges(end.minus(name + ".top-room-length", size.topRoomLengthMm()), end);
            Edges height = new Edges(top, top.plus(name + ".top-room", size.topRoomMm()));
            boxes.add(placed(spot, "card plugs or ports", Fill.ROOM, length, width, height));
        }
        return new Body("card", card.title(), boxes);
    }

    /**
     * A part in a place: its body, and room beyond the far end of its length.
     *
     * @param role the body's id, and what its box is called
     */
    static Body inPlace(String role, String title, String partId, Room room, Spot spot) {
        String name = role + "." + partId;
        Sum far = Sum.ZERO.plus(name + ".length", room.body().lengthMm());
        Edges width =
                new Edges(Sum.ZERO, Sum.ZERO.plus(name + ".width", room.body().widthMm()));
        Edges height =
                new Edges(Sum.ZERO, Sum.ZERO.plus(name + ".height", room.body().heightMm()));
        Edges beyond = new Edges(far, far.plus(name + "." + room.what(), room.beyond()));
        String what = role.replaceAll(":.*", "");
        return new Body(
                role,
                title,
                List.of(
                        placed(spot, what, Fill.SOLID, new Edges(Sum.ZERO, far), width, height),
                        placed(spot, what + " " + room.what(), Fill.ROOM, beyond, width, height)));
    }

    /** A body's size and the room beyond its length, with what that room is for. */
    record Room(SizeMm body, String what, Dimension beyond) {}

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
                spot.name() + "." + axis.name().toLowerCase(Locale.ROOT),
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

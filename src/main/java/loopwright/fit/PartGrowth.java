package loopwright.fit;

import java.util.function.IntFunction;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Memory;
import loopwright.catalog.part.Supply;
import loopwright.fit.Growth.Measure;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.geometry.Body;

/** The parts of which one measure grows: the bodies of records that are that much larger, and nothing else. */
final class PartGrowth {

    private final Inside inside;
    private final Chassis chassis;
    private final Chosen parts;
    private final Board board;

    PartGrowth(FitCase fitCase, Chosen parts) {
        this.chassis = fitCase.chassis();
        this.inside = chassis.inside();
        this.parts = parts;
        this.board = parts.the(Role.BOARD, Board.class);
    }

    /** A part that grows: what is measured, its size now, and its body by its growth. */
    record Part(Measure measure, int nowHmm, Growing growing) {}

    /** The card, longer; the room over its far end moves with it. */
    Part card(Occupant was) {
        GraphicsCard card = parts.the(Role.CARD, GraphicsCard.class);
        Pose pose = inside.board().pose();
        return new Part(
                Measure.CARD_LENGTH,
                card.body().lengthMm().valueHmm(),
                growing(
                        was,
                        e -> PartBodies.card(board, Resized.longer(card, e), Spot.onBoard(chassis)),
                        pose.width().axis()));
    }

    /** The supply, longer; the room for its plugs moves with its far end. */
    Part supply(Occupant was, Place place) {
        Supply supply = parts.the(Role.SUPPLY, Supply.class);
        SizeMm size = supply.body();
        return new Part(
                Measure.SUPPLY_LENGTH,
                size.lengthMm().valueHmm(),
                growing(
                        was,
                        e -> PartBodies.inPlace(
                                "supply",
                                supply.title(),
                                supply.id(),
                                new PartBodies.Room(
                                        Resized.longer(supply, e).body(), "plugs", "plug_room_mm", supply.plugRoomMm()),
                                Spot.in(chassis, place)),
                        place.pose().length().axis()));
    }

    /** The memory, taller. */
    Part memory(Occupant was) {
        Memory memory = parts.the(Role.MEMORY, Memory.class);
        Pose pose = inside.board().pose();
        return new Part(
                Measure.MEMORY_HEIGHT,
                memory.heightMm().valueHmm(),
                growing(
                        was,
                        e -> PartBodies.memory(board, Resized.taller(memory, e), Spot.onBoard(chassis)),
                        pose.height().axis()));
    }

    private static Growing growing(Occupant was, IntFunction<Body> body, Axis axis) {
        return Growing.still(e -> Occupant.of(body.apply(e), was.group(), was.against(), was.touches()), axis);
    }
}

package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.answer.Inspection;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.part.Board;
import loopwright.catalog.part.Plug;
import loopwright.catalog.standard.Fastening.FixedScrews;
import loopwright.catalog.standard.Fastening.Holds;
import loopwright.catalog.standard.Standards.BoardOutline;
import loopwright.catalog.standard.Standards.Hole;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.fit.rules.Role;
import loopwright.geometry.SpaceBox;
import loopwright.plumbing.route.Where;
import loopwright.workshop.assembly.Piece.Screws;

/**
 * The board's screws, and the plugs on it for which its file keeps room.
 *
 * @param plugs a piece a room: no matter in anybody's way, but a hand has to get there
 * @param fromSupply ids of those whose cable comes from the supply
 */
record BoardPieces(List<Screws> screws, List<Piece> plugs, Set<String> fromSupply) {

    /** Plugs that the supply feeds. */
    private static final Set<Plug> OF_SUPPLY = Set.of(Plug.MAIN_24, Plug.PROCESSOR_8);

    /** Copies. */
    BoardPieces {
        screws = List.copyOf(screws);
        plugs = List.copyOf(plugs);
        fromSupply = Set.copyOf(fromSupply);
    }

    static BoardPieces of(Inspection in) {
        Optional<Board> board = in.build().chosen().find(Role.BOARD, Board.class);
        Optional<StandingBody> body = StandingBodies.of(in.fitCase(), in.witness()).stream()
                .filter(b -> b.id().equals("board"))
                .findFirst();
        if (board.isEmpty() || body.isEmpty()) {
            return new BoardPieces(List.of(), List.of(), Set.of());
        }
        Pose pose = in.fitCase().chassis().inside().board().pose();
        List<Piece> plugs = new ArrayList<>();
        Set<String> fed = new HashSet<>();
        for (SpaceBox room : body.get().boxes()) {
            if (room.room()) {
                Piece plug = plug(room);
                plugs.add(plug);
                under(room, body.get(), board.get(), pose.height().axis())
                        .filter(OF_SUPPLY::contains)
                        .ifPresent(p -> fed.add(plug.id()));
            }
        }
        return new BoardPieces(screws(in, board.get(), pose), plugs, fed);
    }

    private static Piece plug(SpaceBox room) {
        String name = room.what().replaceAll(" bend$", "");
        return new Piece(
                "plug:" + name.replace(' ', '-'),
                name,
                List.of(),
                List.of(room),
                List.of(),
                new Piece.Traits(Piece.Kind.PLUG, false, Turns.PLUG),
                Set.of());
    }

    /** The plug that is seated under a room. */
    private static Optional<Plug> under(SpaceBox room, StandingBody body, Board board, Axis height) {
        return body.boxes().stream()
                .filter(b -> !b.room() && isOver(room, b, height))
                .flatMap(b -> board.zones().stream()
                        .filter(z -> z.id().replace('-', ' ').equals(b.what()))
                        .flatMap(z -> z.plug().stream()))
                .findFirst();
    }

    private static boolean isOver(SpaceBox room, SpaceBox plug, Axis height) {
        for (Axis axis : Axis.values()) {
            if (axis != height
                    && (room.along(axis).to() <= plug.along(axis).from()
                            || plug.along(axis).to() <= room.along(axis).from())) {
                return false;
            }
        }
        return true;
    }

    private static List<Screws> screws(Inspection in, Board board, Pose pose) {
        List<Hole> holes = in.fitCase().catalog().standards().boards().stream()
                .filter(o -> o.form() == board.form())
                .findFirst()
                .map(BoardOutline::holes)
                .orElse(List.of());
        int length = FixedScrewsOf.row(in, Holds.BOARD)
                .map(FixedScrews::lengthMm)
                .map(d -> d.valueHmm())
                .orElse(0);
        Where corner = new Where(
                pose.corner().along(Axis.X).valueHmm(),
                pose.corner().along(Axis.Y).valueHmm(),
                pose.corner().along(Axis.Z).valueHmm());
        Face away = face(pose.height());
        List<Driving.Screw> known = holes.stream()
                .map(h -> corner.towards(pose.length(), h.lengthMm().valueHmm())
                        .towards(pose.width(), h.widthMm().valueHmm()))
                .map(at -> new Driving.Screw(at, away, length))
                .toList();
        return holes.isEmpty() ? List.of() : List.of(new Screws(holes.size(), "from the board's face", known));
    }

    /** The face that a heading points to. */
    static Face face(Heading heading) {
        return switch (heading) {
            case LEFT -> Face.LEFT;
            case RIGHT -> Face.RIGHT;
            case FRONT -> Face.FRONT;
            case REAR -> Face.REAR;
            case DOWN -> Face.FLOOR;
            case UP -> Face.ROOF;
        };
    }
}

package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.answer.Inspection;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.chassis.Shell;
import loopwright.catalog.part.Tube;
import loopwright.fit.FitCase;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.fit.Witness;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.plumbing.LoopPlan;
import loopwright.workshop.assembly.Piece.Body;
import loopwright.workshop.fasten.Fasteners;

/**
 * The pieces of a build.
 *
 * @param hall what they are moved in
 * @param notes what is not known of them
 */
record BuildPieces(List<Piece> pieces, Hall hall, List<String> notes) {

    /** What never moves. */
    private static final Set<String> BUILT_IN = Set.of("obstruction", "removable", "added");

    /** Copies. */
    BuildPieces {
        pieces = List.copyOf(pieces);
        notes = List.copyOf(notes);
    }

    static BuildPieces of(Inspection inspection, LoopPlan loop, Fasteners fasteners) {
        FitCase fitCase = inspection.fitCase();
        boolean soft = loop.materials().tube().kind() == Tube.Kind.SOFT;
        RunPieces runs = RunPieces.of(loop, withPanel(inspection));
        BoardPieces onBoard = BoardPieces.of(inspection);
        List<SpaceBox> builtIn = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        for (StandingBody body : StandingBodies.of(fitCase, inspection.witness())) {
            Set<String> carries = Carried.by(body.id(), runs, onBoard);
            if (BUILT_IN.contains(kind(body))) {
                builtIn.addAll(matter(body));
            } else if (kind(body).equals("stack")) {
                StackPiece stack = stack(inspection, fasteners, body);
                pieces.add(stack.piece(body, carries, stack.withPanel() && soft));
            } else if (!matter(body).isEmpty()) {
                pieces.add(part(inspection, body, onBoard, carries));
            }
        }
        pieces.addAll(onBoard.plugs());
        pieces.addAll(runs.pieces());
        pieces.addAll(new OutsideParts(fitCase, inspection.witness()).lids());
        Hall hall = new Hall(
                reach(fitCase, Axis.X), reach(fitCase, Axis.Y), reach(fitCase, Axis.Z), open(fitCase), builtIn);
        return new BuildPieces(pieces, hall, notes(inspection, runs));
    }

    private static Set<Face> open(FitCase fitCase) {
        return fitCase.chassis().shell().openFaces();
    }

    /** Stacks whose panel comes off. */
    private static Set<String> withPanel(Inspection inspection) {
        return inspection.witness().stacks().stream()
                .map(a -> a.stack().frame())
                .filter(f -> open(inspection.fitCase()).contains(f.panel().face()))
                .map(f -> "stack:" + f.mount().id())
                .collect(Collectors.toSet());
    }

    private static String kind(StandingBody body) {
        return body.id().replaceAll(":.*", "");
    }

    private static List<SpaceBox> matter(StandingBody body) {
        return body.boxes().stream().filter(b -> !b.room()).toList();
    }

    private static StackPiece stack(Inspection inspection, Fasteners fasteners, StandingBody body) {
        FitCase fitCase = inspection.fitCase();
        OutsideParts outside = new OutsideParts(fitCase, inspection.witness());
        Witness.At at = inspection.witness().stacks().stream()
                .filter(a ->
                        body.id().equals("stack:" + a.stack().frame().mount().id()))
                .findFirst()
                .orElseThrow();
        String mount = at.stack().frame().mount().id();
        boolean withPanel = withPanel(inspection).contains(body.id());
        List<Body> held = new ArrayList<>(outside.held(at));
        if (withPanel) {
            held.add(outside.panel(at.stack().frame()));
        }
        return new StackPiece(
                at,
                fasteners.sets().stream()
                        .filter(s -> s.joint().mount().equals(mount))
                        .toList(),
                held,
                withPanel,
                fitCase.catalog().standards());
    }

    private static Piece part(Inspection inspection, StandingBody body, BoardPieces onBoard, Set<String> carries) {
        boolean wet = switch (kind(body)) {
            case "block", "pump", "reservoir" -> true;
            case "card" -> inspection.machine().water().blocks().size() > 1;
            default -> false;
        };
        List<SpaceBox> reach = kind(body).equals("board")
                ? List.of()
                : body.boxes().stream().filter(SpaceBox::room).toList();
        String title = title(body.id());
        return new Piece(
                body.id(),
                title,
                List.of(Body.inside(title, matter(body))),
                reach,
                kind(body).equals("board") ? onBoard.screws() : FixedScrewsOf.of(inspection, body.id()),
                new Piece.Traits(Piece.Kind.PART, wet, turn(kind(body))),
                carries);
    }

    private static String title(String id) {
        return id.equals("block") ? "processor block" : id.replace(':', ' ').toLowerCase(Locale.ROOT);
    }

    private static int turn(String kind) {
        return switch (kind) {
            case "board" -> Turns.BOARD;
            case "memory" -> Turns.MEMORY;
            case "block" -> Turns.BLOCK;
            case "supply" -> Turns.SUPPLY;
            case "drive" -> Turns.DRIVE;
            case "pump", "reservoir" -> Turns.PUMP;
            default -> Turns.CARD;
        };
    }

    private static Reach reach(FitCase fitCase, Axis axis) {
        Shell.Interior in = fitCase.chassis().shell().interior();
        int size = switch (axis) {
            case X -> in.widthMm().valueHmm();
            case Y -> in.depthMm().valueHmm();
            case Z -> in.heightMm().valueHmm();
        };
        return new Reach(0, size);
    }

    private static List<String> notes(Inspection inspection, RunPieces runs) {
        List<String> out = new ArrayList<>(runs.notes());
        OutsideParts outside = new OutsideParts(inspection.fitCase(), inspection.witness());
        Set<Face> hidden = EnumSet.noneOf(Face.class);
        for (Witness.At at : inspection.witness().stacks()) {
            var mount = at.stack().frame().mount();
            outside.cover(mount)
                    .filter(c -> c.over() == RaisedCover.Over.WINDOW)
                    .ifPresent(c -> out.add(mount.id()
                            + " stack: its bolts also hold the cover, and their heads lie under its skin; no file says how the"
                            + " skin opens: clear that up before the sheet is cut"));
            if (mount.insetMm().valueHmm() > 0
                    && hidden.add(at.stack().frame().panel().face())) {
                out.add(mount.id()
                        + " stack: its seat is a bracket inside the sheet; see that a driver gets through the"
                        + " sheet to the heads");
            }
        }
        return out;
    }
}

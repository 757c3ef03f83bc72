package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import loopwright.answer.Inspection;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.chassis.Shell;
import loopwright.fit.FitCase;
import loopwright.fit.StandingBodies;
import loopwright.fit.StandingBody;
import loopwright.fit.Witness;
import loopwright.geometry.SpaceBox;
import loopwright.workshop.assembly.Ways.Hall;

/**
 * In which order a build goes together, dry first and again after paint, and what comes out first to service a part.
 *
 * @param steps in order, as far as there is one
 * @param deadlock titles of the fewest parts that block each other; empty: there is a whole order
 * @param services a line for each part
 * @param notes what to look at by hand
 */
public record Assembly(List<Step> steps, List<String> deadlock, List<Service> services, List<String> notes) {

    /** Copies. */
    public Assembly {
        steps = List.copyOf(steps);
        deadlock = List.copyOf(deadlock);
        services = List.copyOf(services);
        notes = List.copyOf(notes);
    }

    /**
     * One thing that is put in.
     *
     * @param dry what is done at the dry fits
     * @param paintedAndWet what is done after paint
     */
    public record Step(String id, String title, String dry, String paintedAndWet) {}

    /**
     * What it takes to get a part out.
     *
     * @param first what comes out before it
     * @param possible whether it can come out at all, by moves along the axes
     * @param drain whether the loop has to be drained for it
     */
    public record Service(String id, String title, List<String> first, boolean possible, boolean drain) {}

    /** The assembly of a build, both side panels off. */
    public static Assembly of(Inspection inspection) {
        FitCase fitCase = inspection.fitCase();
        List<StandingBody> bodies = StandingBodies.of(fitCase, inspection.witness());
        boolean cardIsWet = inspection.machine().water().blocks().size() > 1;
        List<SpaceBox> builtIn = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        for (StandingBody body : bodies) {
            if (isBuiltIn(body)) {
                builtIn.addAll(matter(body));
            } else if (!matter(body).isEmpty()) {
                pieces.add(piece(body, cardIsWet));
            }
        }
        return of(
                pieces,
                new Hall(
                        reach(fitCase, Face.RIGHT),
                        reach(fitCase, Face.REAR),
                        reach(fitCase, Face.ROOF),
                        EnumSet.of(Face.LEFT, Face.RIGHT),
                        builtIn),
                notes(fitCase, inspection.witness()));
    }

    static Assembly of(List<Piece> pieces, Hall hall, List<String> more) {
        PuttingIn order = new PuttingIn(pieces, hall);
        List<Step> steps = order.order().stream().map(i -> step(pieces.get(i))).toList();
        List<String> deadlock =
                order.deadlock().stream().map(i -> pieces.get(i).title()).toList();
        List<Service> services = new ArrayList<>();
        List<String> notes = new ArrayList<>(more);
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            List<Integer> out = order.service(i);
            boolean wet =
                    piece.wet() || out.stream().anyMatch(k -> pieces.get(k).wet());
            services.add(new Service(
                    piece.id(),
                    piece.title(),
                    out.stream()
                            .filter(k -> !pieces.get(k).equals(piece))
                            .map(k -> pieces.get(k).title())
                            .toList(),
                    !out.isEmpty(),
                    wet));
            if (order.tilts(i)) {
                notes.add(piece.title() + ": no way in along the axes; try the tilt with a card dummy before paint");
            }
            order.outOfReach(i)
                    .forEach(k -> notes.add(
                            piece.title() + ": " + piece.reach().get(k).what()
                                    + " cannot be reached straight from a side; try by hand at the dry fit"));
        }
        return new Assembly(steps, deadlock, services, notes);
    }

    private static Step step(Piece piece) {
        String plugs = piece.reach().isEmpty() ? "" : ", try every plug and fitting";
        String joins = piece.reach().isEmpty() ? "" : piece.wet() ? ", join its tubes" : ", plug it in";
        return new Step(
                piece.id(),
                piece.title(),
                "put in dry, two screws" + plugs,
                "put in, all screws by hand first" + joins);
    }

    private static boolean isBuiltIn(StandingBody body) {
        String kind = body.id().replaceAll(":.*", "");
        return Set.of("obstruction", "removable", "added").contains(kind);
    }

    private static List<SpaceBox> matter(StandingBody body) {
        return body.boxes().stream().filter(b -> !b.room()).toList();
    }

    private static Piece piece(StandingBody body, boolean cardIsWet) {
        String kind = body.id().replaceAll(":.*", "");
        boolean stack = kind.equals("stack");
        boolean radiator = body.boxes().stream().anyMatch(b -> b.what().contains("radiator"));
        boolean wet = stack
                ? radiator
                : Set.of("block", "pump", "reservoir").contains(kind) || (kind.equals("card") && cardIsWet);
        Set<String> carries = kind.equals("board") ? Set.of("memory", "block", "card") : Set.of();
        List<SpaceBox> reach = kind.equals("board")
                ? List.of()
                : body.boxes().stream().filter(SpaceBox::room).toList();
        return new Piece(body.id(), title(body.id()), matter(body), reach, wet, turn(kind), carries);
    }

    private static String title(String id) {
        return switch (id) {
            case "block" -> "processor block";
            default ->
                id.startsWith("stack:")
                        ? id.substring("stack:".length()) + " stack"
                        : id.replace(':', ' ').toLowerCase(Locale.ROOT);
        };
    }

    private static int turn(String kind) {
        return switch (kind) {
            case "board" -> 0;
            case "memory" -> 1;
            case "block" -> 2;
            case "supply" -> 3;
            case "drive" -> 4;
            case "stack" -> 5;
            case "pump", "reservoir" -> 6;
            default -> 7;
        };
    }

    private static SpaceBox.Reach reach(FitCase fitCase, Face far) {
        Shell.Interior in = fitCase.chassis().shell().interior();
        int size = switch (far.normal()) {
            case X -> in.widthMm().valueHmm();
            case Y -> in.depthMm().valueHmm();
            case Z -> in.heightMm().valueHmm();
        };
        return new SpaceBox.Reach(0, size);
    }

    private static List<String> notes(FitCase fitCase, Witness witness) {
        List<String> out = new ArrayList<>();
        List<RaisedCover> covers = witness.mods().mods(fitCase.chassis()).stream()
                .flatMap(m -> m.effect().covers().stream())
                .toList();
        for (RaisedCover cover : covers) {
            out.add(cover.mount() + " cover: on last; the screws of fans and radiator under it are driven before");
        }
        for (Witness.At at : witness.stacks()) {
            out.add(at.stack().frame().mount().id()
                    + " stack: bench-assemble radiator and fans, screws by hand; its bolts from outside free grille, gasket and stack"
                    + " together, so hold it when they come out");
        }
        return out;
    }
}

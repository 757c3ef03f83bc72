package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loopwright.catalog.part.Tube;
import loopwright.geometry.SpaceBox;
import loopwright.loop.Machine;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.Port;
import loopwright.plumbing.route.Route;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.TubeShape;

/**
 * The runs of a planned loop: each is plugged into both parts that it joins.
 *
 * @param pieces a piece a run, in loop order
 * @param of which runs are plugged into a piece, by its id
 */
record RunPieces(List<Piece> pieces, Map<String, Set<String>> of, List<String> notes) {

    /** Copies. */
    RunPieces {
        pieces = List.copyOf(pieces);
        of = Map.copyOf(of);
        notes = List.copyOf(notes);
    }

    /**
     * The runs of a loop.
     *
     * @param beside ids of stacks that go on with their panel: soft tube is joined to them while they lie beside the case, so they
     *     go on after it
     */
    static RunPieces of(LoopPlan loop, Set<String> beside) {
        List<Piece> pieces = new ArrayList<>();
        Map<String, Set<String>> of = new HashMap<>();
        List<String> notes = new ArrayList<>();
        boolean soft = loop.materials().tube().kind() == Tube.Kind.SOFT;
        for (int k = 0; k < loop.runs().size(); k++) {
            PlannedRun run = loop.runs().get(k);
            String id = "run:" + (k + 1);
            Set<String> later = new HashSet<>();
            for (String end : List.of(run.from().part(), run.to().part())) {
                if (soft && beside.contains(pieceId(end))) {
                    later.add(pieceId(end));
                } else {
                    of.computeIfAbsent(pieceId(end), e -> new HashSet<>()).add(id);
                }
            }
            Piece.Traits traits = new Piece.Traits(soft ? Piece.Kind.SOFT_RUN : Piece.Kind.RIGID_RUN, true, Turns.RUN);
            pieces.add(piece(id, run, loop.materials().shape(), traits, later));
        }
        List<String> lost = loop.runs().stream()
                .filter(r -> r.route().isEmpty())
                .map(PlannedRun::name)
                .toList();
        if (!lost.isEmpty()) {
            notes.add("No way was found for these runs of tube, so what they cross is not known: "
                    + String.join(", ", lost));
        }
        return new RunPieces(pieces, of, notes);
    }

    private static Piece piece(String id, PlannedRun run, TubeShape shape, Piece.Traits traits, Set<String> later) {
        String title = "tube " + run.name();
        List<SpaceBox> matter = run.route().stream()
                .flatMap(r -> r.room(title, shape.radius()).stream())
                .map(Boxes::of)
                .toList();
        List<SpaceBox> hands = new ArrayList<>();
        List<Solid> fittings = run.route()
                .map(Route::fittings)
                .orElseGet(() -> List.of(straight(run.from(), shape), straight(run.to(), shape)));
        for (Solid fitting : fittings) {
            hands.add(Boxes.of(new Solid("a fitting", fitting.low(), fitting.high())));
        }
        return new Piece(
                id,
                title,
                matter.isEmpty() ? List.of() : List.of(Piece.Body.inside(title, matter)),
                hands,
                List.of(),
                traits,
                later);
    }

    /** The fitting of a run whose way is not known: straight on its port. */
    private static Solid straight(Port port, TubeShape shape) {
        int height = shape.straight().height();
        return Solid.sleeve(
                "a fitting",
                port.at(),
                port.at().towards(port.out(), height),
                shape.straight().radius());
    }

    private static String pieceId(String part) {
        return switch (part) {
            case Machine.PROCESSOR -> "block";
            case Machine.CARD -> "card";
            default ->
                part.endsWith(" radiator") ? "stack:" + part.substring(0, part.length() - " radiator".length()) : part;
        };
    }
}

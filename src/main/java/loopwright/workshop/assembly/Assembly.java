package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import loopwright.answer.Inspection;
import loopwright.answer.PlumbingPlan;
import loopwright.catalog.standard.Fastening.Driver;
import loopwright.plumbing.LoopPlan;
import loopwright.workshop.fasten.Fasteners;

/**
 * In which order a build goes together, dry first and again after paint, and what comes out first to service a part.
 *
 * @param steps in order, as far as there is one
 * @param deadlock titles of the fewest parts that block each other; empty: there is a whole order
 * @param services a line for each part, and for each layer of a stack that has screws of its own
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
     * @param screws how many, driven from where; empty where it has none
     * @param before what it has to be in before, and why: a way, a hand or a driver would be shut off
     * @param dry what is done at the dry fits
     * @param paintedAndWet what is done after paint
     */
    public record Step(
            String id, String title, List<String> screws, List<String> before, String dry, String paintedAndWet) {

        /** Copies. */
        public Step {
            screws = List.copyOf(screws);
            before = List.copyOf(before);
        }
    }

    /**
     * What it takes to get a part out.
     *
     * @param first what comes out before it
     * @param plugs what is unplugged before
     * @param together what the same screws free, so that it comes out too
     * @param possible whether it can come out at all, by moves along the axes
     * @param drain whether the loop has to be drained for it
     */
    public record Service(
            String id,
            String title,
            List<String> first,
            List<String> plugs,
            List<String> together,
            Tubes tubes,
            boolean possible,
            boolean drain) {

        /** Copies. */
        public Service {
            first = List.copyOf(first);
            plugs = List.copyOf(plugs);
            together = List.copyOf(together);
        }
    }

    /**
     * Runs of tube to see to.
     *
     * @param undone before
     * @param aside soft ones in the way: swung aside, or undone
     */
    public record Tubes(List<String> undone, List<String> aside) {

        /** Copies. */
        public Tubes {
            undone = List.copyOf(undone);
            aside = List.copyOf(aside);
        }
    }

    /** The assembly of a build, with what comes off the chassis taken off. */
    public static Assembly of(Inspection inspection) {
        return of(inspection, PlumbingPlan.of(inspection).plan(), Fasteners.of(inspection));
    }

    /** The assembly of a build whose loop and screws are known. */
    public static Assembly of(Inspection inspection, LoopPlan loop, Fasteners fasteners) {
        BuildPieces made = BuildPieces.of(inspection, loop, fasteners);
        return of(
                made.pieces(),
                made.hall(),
                inspection.fitCase().catalog().practice().fastening().drivers(),
                made.notes());
    }

    static Assembly of(List<Piece> pieces, Hall hall, List<Driver> drivers, List<String> more) {
        PuttingIn order = new PuttingIn(pieces, hall, drivers);
        List<Step> steps = order.order().stream().map(i -> step(order, i)).toList();
        List<String> deadlock =
                order.deadlock().stream().map(i -> pieces.get(i).title()).toList();
        List<String> notes = new ArrayList<>(more);
        for (int i = 0; i < pieces.size(); i++) {
            notes.addAll(ByHand.of(pieces.get(i), order.unmet(i)));
        }
        return new Assembly(steps, deadlock, new Services(order).all(), notes);
    }

    private static Step step(PuttingIn order, int piece) {
        Piece one = order.pieces().get(piece);
        List<String> screws =
                one.allScrews().stream().map(s -> s.count() + " " + s.where()).toList();
        return new Step(
                one.id(), one.title(), screws, before(order, piece), StepWords.dry(one), StepWords.painted(one));
    }

    /** The blocking pairs of a piece: whatever way it takes, these would be in it. */
    private static List<String> before(PuttingIn order, int piece) {
        Map<Integer, Set<String>> why = new TreeMap<>();
        for (Need need : order.needs(piece)) {
            order.members(need.ways().inAll()).stream()
                    .filter(k -> !order.pieces()
                            .get(piece)
                            .carries()
                            .contains(order.pieces().get(k).id()))
                    .forEach(k -> why.computeIfAbsent(k, x -> new LinkedHashSet<>())
                            .add(need.kind().word()));
        }
        List<String> out = new ArrayList<>();
        why.forEach((k, words) -> out.add(order.pieces().get(k).title() + " (" + String.join(", ", words) + ")"));
        return out;
    }
}

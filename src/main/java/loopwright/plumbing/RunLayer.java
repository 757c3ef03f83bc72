package loopwright.plumbing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import loopwright.plumbing.route.Blockers;
import loopwright.plumbing.route.End;
import loopwright.plumbing.route.Route;
import loopwright.plumbing.route.Router;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Space;
import loopwright.plumbing.route.TubeShape;

/**
 * Lays the runs one after the other: tube and fittings that lie are in the way of those that follow, and so are the fittings
 * of ports whose runs do not lie yet. A run that finds no way is laid first, and all are laid again.
 */
final class RunLayer {

    /** Spacing of the lattice a run is laid on, hundredths of a millimetre. */
    private static final int FINE_HMM = 500;

    /** Spacing that is tried before a run is called blocked. */
    private static final int FINEST_HMM = 250;

    /** Spacing at which bodies are asked whether they block. */
    private static final int COARSE_HMM = 1000;

    private final Space space;
    private final TubeShape tube;
    private final List<Wanted> wanted;
    private final int stepHmm;

    /** A run that is wanted. */
    record Wanted(Port from, Port to) {
        String name() {
            return "tube " + from.part() + " to " + to.part();
        }
    }

    /**
     * Runs to lay.
     *
     * @param stepHmm lengths are rounded up to this
     */
    RunLayer(Space space, TubeShape tube, List<Wanted> wanted, int stepHmm) {
        this.space = space;
        this.tube = tube;
        this.wanted = List.copyOf(wanted);
        this.stepHmm = stepHmm;
    }

    List<PlannedRun> lay() {
        List<Integer> turn =
                new ArrayList<>(IntStream.range(0, wanted.size()).boxed().toList());
        List<Optional<Route>> laid = List.of();
        boolean again = true;
        for (int attempt = 0; again && attempt <= wanted.size(); attempt++) {
            laid = lay(turn);
            List<Optional<Route>> now = laid;
            Optional<Integer> stuck =
                    turn.stream().filter(k -> now.get(k).isEmpty()).findFirst();
            again = stuck.isPresent() && turn.indexOf(stuck.get()) > 0;
            stuck.ifPresent(k -> {
                turn.remove(k);
                turn.add(0, k);
            });
        }
        return finish(new ArrayList<>(laid));
    }

    private List<Optional<Route>> lay(List<Integer> turn) {
        List<Optional<Route>> laid = new ArrayList<>();
        wanted.forEach(w -> laid.add(Optional.empty()));
        for (int k : turn) {
            laid.set(k, route(k, laid, FINE_HMM));
        }
        return laid;
    }

    private List<PlannedRun> finish(List<Optional<Route>> laid) {
        List<PlannedRun> out = new ArrayList<>();
        for (int k = 0; k < wanted.size(); k++) {
            Wanted run = wanted.get(k);
            if (laid.get(k).isEmpty()) {
                laid.set(k, route(k, laid, FINEST_HMM));
            }
            int length = laid.get(k)
                    .map(Route::lengthHmm)
                    .orElseGet(() -> run.from().at().wayTo(run.to().at()));
            List<String> blockers = laid.get(k).isPresent()
                    ? List.of()
                    : new Blockers(around(k, laid), tube, COARSE_HMM).of(end(run.from()), end(run.to()));
            out.add(new PlannedRun(run.from(), run.to(), laid.get(k), blockers, roundedUp(length)));
        }
        return out;
    }

    private int roundedUp(int lengthHmm) {
        return (lengthHmm + stepHmm - 1) / stepHmm * stepHmm;
    }

    private Optional<Route> route(int k, List<Optional<Route>> laid, int spacingHmm) {
        Wanted run = wanted.get(k);
        return new Router(around(k, laid), tube, spacingHmm).route(end(run.from()), end(run.to()));
    }

    /** What a run has to go round. */
    private Space around(int k, List<Optional<Route>> laid) {
        List<Solid> more = new ArrayList<>();
        Wanted own = wanted.get(k);
        for (int i = 0; i < wanted.size(); i++) {
            Wanted run = wanted.get(i);
            if (i == k) {
                continue;
            }
            if (laid.get(i).isPresent()) {
                more.addAll(laid.get(i).get().room(run.name(), tube.radius()));
            } else {
                addFitting(more, run.from(), own);
                addFitting(more, run.to(), own);
            }
        }
        return space.with(more);
    }

    /** Assumed ports of one part say nothing about their distance, so that their fittings never meet. */
    private void addFitting(List<Solid> more, Port port, Wanted own) {
        boolean assumed = port.assumed()
                && (port.part().equals(own.from().part())
                        || port.part().equals(own.to().part()));
        if (!assumed) {
            more.add(Solid.sleeve(
                    "fitting on " + port.name(),
                    port.at(),
                    port.at().towards(port.out(), tube.straight().height()),
                    tube.straight().radius()));
        }
    }

    static End end(Port port) {
        return new End(port.at(), port.out());
    }
}

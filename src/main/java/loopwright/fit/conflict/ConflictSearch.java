package loopwright.fit.conflict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/**
 * Finds all minimal conflicts and all minimal corrections among facts by asking whether sets of them can hold together.
 *
 * <p>The answer must be monotone: what can hold together still can when facts are given up. Each round takes a set that hits
 * every known correction; if it can hold it is grown until nothing can be added, and what is left out is a new correction; if it
 * cannot, it is shrunk until nothing can be spared, and is a new conflict. The search is over when the minimal hitting sets of the
 * corrections are exactly the conflicts. Source: duality of [Reiter1987]; asking in this order is common practice.
 */
public final class ConflictSearch {

    private final int facts;
    private final Predicate<FactSet> holds;
    private final BooleanSupplier interrupted;

    /**
     * A search.
     *
     * @param facts how many facts there are, known as 0 to facts − 1
     * @param holds whether a set of facts can hold together
     * @param interrupted asked before each question
     */
    public ConflictSearch(int facts, Predicate<FactSet> holds, BooleanSupplier interrupted) {
        this.facts = facts;
        this.holds = holds;
        this.interrupted = interrupted;
    }

    /**
     * What was found.
     *
     * @param conflicts sets that cannot hold together, while every part of them can; smallest first
     * @param corrections sets that have to be given up for the rest to hold, none of which can be kept; smallest first
     * @param whole whether that is all
     */
    public record Found(List<FactSet> conflicts, List<FactSet> corrections, boolean whole) {
        /** Copies. */
        public Found {
            conflicts = List.copyOf(conflicts);
            corrections = List.copyOf(corrections);
        }
    }

    /** Asked while it was told to stop. */
    private static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;

        Stopped() {
            super("stopped", null, false, false);
        }
    }

    /** Runs it. */
    public Found run() {
        List<FactSet> conflicts = new ArrayList<>();
        List<FactSet> corrections = new ArrayList<>();
        boolean whole = true;
        try {
            Optional<FactSet> next = nextSeed(conflicts, corrections);
            while (next.isPresent()) {
                if (ask(next.get())) {
                    corrections.add(FactSet.upTo(facts).minus(grown(next.get())));
                } else {
                    conflicts.add(shrunk(next.get()));
                }
                next = nextSeed(conflicts, corrections);
            }
        } catch (Stopped e) {
            whole = false;
        }
        conflicts.sort(Comparator.naturalOrder());
        corrections.sort(Comparator.naturalOrder());
        return new Found(conflicts, corrections, whole);
    }

    private boolean ask(FactSet set) {
        if (interrupted.getAsBoolean()) {
            throw new Stopped();
        }
        return holds.test(set);
    }

    /** A hitting set of the corrections that holds no known conflict; everything, to begin with. */
    private Optional<FactSet> nextSeed(List<FactSet> conflicts, List<FactSet> corrections) {
        if (conflicts.isEmpty() && corrections.isEmpty()) {
            return Optional.of(FactSet.upTo(facts));
        }
        return HittingSets.all(corrections).stream()
                .filter(h -> conflicts.stream().noneMatch(c -> c.isSubsetOf(h)))
                .findFirst();
    }

    private FactSet grown(FactSet seed) {
        FactSet set = seed;
        for (int fact = 0; fact < facts; fact++) {
            if (!set.has(fact) && ask(set.with(fact))) {
                set = set.with(fact);
            }
        }
        return set;
    }

    private FactSet shrunk(FactSet seed) {
        FactSet set = seed;
        for (int fact : seed.numbers()) {
            if (!ask(set.without(fact))) {
                set = set.without(fact);
            }
        }
        return set;
    }
}

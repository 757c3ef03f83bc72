package loopwright.fit.conflict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Keeps, of sets that come with something, those that no other one is part of; of equal ones the first.
 *
 * @param <W> what comes with a set
 */
public final class Smallest<W> {

    private final List<Kept<W>> kept = new ArrayList<>();

    /** A set and what came with it. */
    public record Kept<W>(FactSet set, W with) {}

    /** Whether a kept set is part of this one, so that it would not be kept. */
    public boolean covers(FactSet set) {
        for (Kept<W> one : kept) {
            if (one.set().isSubsetOf(set)) {
                return true;
            }
        }
        return false;
    }

    /** Offers a set. */
    public void offer(FactSet set, W with) {
        if (!covers(set)) {
            kept.removeIf(k -> set.isSubsetOf(k.set()));
            kept.add(new Kept<>(set, with));
        }
    }

    /** What is kept, smallest first. */
    public List<Kept<W>> all() {
        List<Kept<W>> out = new ArrayList<>(kept);
        out.sort(Comparator.comparing(Kept::set));
        return List.copyOf(out);
    }

    /** The sets alone, smallest first. */
    public List<FactSet> sets() {
        return all().stream().map(Kept::set).toList();
    }
}

package loopwright.catalog.read;

import java.util.List;
import java.util.TreeSet;

/** Collects problems while reading goes on, so that all of them are told at once. */
public final class Problems {

    private final TreeSet<Problem> found = new TreeSet<>();

    /** Notes one; the same problem twice counts once. */
    public void add(Problem problem) {
        found.add(problem);
    }

    /** Whether nothing is wrong so far. */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** All of them by file, line and column. */
    public List<Problem> sorted() {
        return List.copyOf(found);
    }

    /**
     * Does nothing if nothing is wrong.
     *
     * @throws ProblemsException if anything is
     */
    public void throwIfAny() {
        if (!found.isEmpty()) {
            throw new ProblemsException(sorted());
        }
    }
}

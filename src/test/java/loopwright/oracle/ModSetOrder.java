package loopwright.oracle;

import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.SortedSet;
import java.util.TreeSet;

/** The order in which answers list mod sets: by size, then by ids; only for printing and comparing. */
public final class ModSetOrder {

    private static final Comparator<Collection<String>> ORDER =
            Comparator.<Collection<String>>comparingInt(Collection::size).thenComparing(Object::toString);

    private ModSetOrder() {}

    /** An empty, sorted set of mod sets. */
    public static SortedSet<SortedSet<String>> sets() {
        return new TreeSet<>(ORDER);
    }

    /** A mod set of these ids. */
    public static SortedSet<String> of(Collection<String> mods) {
        return Collections.unmodifiableSortedSet(new TreeSet<>(mods));
    }
}

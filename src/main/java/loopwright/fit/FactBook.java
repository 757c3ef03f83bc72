package loopwright.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.fit.conflict.FactSet;

/** Numbers the facts that come up, in the order in which they do. */
public final class FactBook {

    private final Map<String, Fact> byId = new HashMap<>();
    private final List<Fact> all = new ArrayList<>();
    private final Map<Long, Integer> clear = new HashMap<>();

    /** The number of a fact. */
    int number(Fact.Kind kind, String about) {
        Fact fact = new Fact(all.size(), kind, about);
        Fact known = byId.putIfAbsent(fact.id(), fact);
        if (known != null) {
            return known.number();
        }
        all.add(fact);
        return fact.number();
    }

    /** The number of "these two keep clear", by their bodies' ids. */
    int clear(String one, String other) {
        return number(Fact.Kind.CLEAR, one.compareTo(other) <= 0 ? one + ":" + other : other + ":" + one);
    }

    /** The same for bodies that do not slide, by their numbers, which are quicker to look up. */
    int clear(Bodies bodies, int one, int other) {
        long key = (long) Math.min(one, other) << 32 | Math.max(one, other);
        return clear.computeIfAbsent(
                key,
                k -> clear(bodies.get(one).body().id(), bodies.get(other).body().id()));
    }

    /** The same for a stack and a body that does not slide. */
    int clear(Hang hang, Bodies bodies, int body) {
        // Bodies have numbers from 0; a mount is a number below.
        long key = (long) (-1 - hang.frame().index()) << 32 | body;
        return clear.computeIfAbsent(
                key,
                k -> clear(hang.occupant().body().id(), bodies.get(body).body().id()));
    }

    /** The fact with a number. */
    public Fact fact(int number) {
        return all.get(number);
    }

    /** The facts of a set, wishes first, by kind and id. */
    public List<Fact> facts(FactSet set) {
        return set.numbers().stream()
                .map(all::get)
                .sorted((a, b) -> {
                    int byKind = a.kind().compareTo(b.kind());
                    return byKind != 0 ? byKind : a.about().compareTo(b.about());
                })
                .toList();
    }
}

package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/** The facts of one case by id, and the smallest sets of them that were broken. */
final class WhyFacts {
    private final List<String> names = new ArrayList<>();
    private final Map<String, Broken> byName = new HashMap<>();
    private final List<Broken> smallest = new ArrayList<>();

    Broken fact(String id) {
        return byName.computeIfAbsent(id, i -> {
            names.add(i);
            return Broken.of(names.size() - 1);
        });
    }

    /** "These two keep clear": the ids in the order of the alphabet. */
    Broken clear(String one, String other) {
        return fact(clearId(one, other));
    }

    static String clearId(String one, String other) {
        return "clear:" + (one.compareTo(other) <= 0 ? one + ":" + other : other + ":" + one);
    }

    SortedSet<String> ids(Broken broken) {
        SortedSet<String> out = new TreeSet<>();
        for (int i = 0; i < names.size(); i++) {
            if (broken.has(i)) {
                out.add(names.get(i));
            }
        }
        return out;
    }

    /** Whether a set that some candidate breaks is part of this one. */
    boolean covers(Broken broken) {
        for (Broken one : smallest) {
            if (one.isWithin(broken)) {
                return true;
            }
        }
        return false;
    }

    void offer(Broken broken) {
        if (!covers(broken)) {
            smallest.removeIf(broken::isWithin);
            smallest.add(broken);
        }
    }

    /** The smallest sets. */
    List<Broken> kept() {
        return smallest;
    }
}

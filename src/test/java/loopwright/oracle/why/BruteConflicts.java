package loopwright.oracle.why;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Conflicts straight from their definition: sets that no candidate keeps, of which every part some candidate keeps. */
final class BruteConflicts {

    /** Up to so many facts every subset is tried. */
    static final int FACTS_MAX = 14;

    private BruteConflicts() {}

    /** Conflicts of facts that some smallest broken set has; no other fact is in any, since each is kept by whoever is asked. */
    static Set<SortedSet<String>> of(Set<SortedSet<String>> broken) {
        Set<String> facts = new TreeSet<>();
        broken.forEach(facts::addAll);
        return facts.size() <= FACTS_MAX ? bySubsets(broken, List.copyOf(facts)) : byGrowing(broken);
    }

    private static boolean someCandidateKeeps(Set<SortedSet<String>> broken, Collection<String> facts) {
        return broken.stream().anyMatch(b -> b.stream().noneMatch(facts::contains));
    }

    private static Set<SortedSet<String>> bySubsets(Set<SortedSet<String>> broken, List<String> facts) {
        Set<SortedSet<String>> out = ProductionWhy.sets();
        for (int bits = 0; bits < 1 << facts.size(); bits++) {
            SortedSet<String> set = new TreeSet<>();
            for (int i = 0; i < facts.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    set.add(facts.get(i));
                }
            }
            boolean smallest = !someCandidateKeeps(broken, set);
            for (String one : List.copyOf(set)) {
                SortedSet<String> less = new TreeSet<>(set);
                less.remove(one);
                smallest = smallest && someCandidateKeeps(broken, less);
            }
            if (smallest) {
                out.add(set);
            }
        }
        return out;
    }

    /** Hitting sets, correction by correction: each that misses the next one grows by each of its facts; the smallest stay. */
    static Set<SortedSet<String>> byGrowing(Set<SortedSet<String>> broken) {
        Set<SortedSet<String>> out = ProductionWhy.sets();
        out.add(new TreeSet<>());
        for (SortedSet<String> next : broken) {
            Set<SortedSet<String>> grown = ProductionWhy.sets();
            for (SortedSet<String> hit : out) {
                if (hit.stream().anyMatch(f -> next.contains(f))) {
                    grown.add(hit);
                } else {
                    for (String fact : next) {
                        SortedSet<String> more = new TreeSet<>(hit);
                        more.add(fact);
                        grown.add(more);
                    }
                }
            }
            out = ProductionWhy.sets();
            List<SortedSet<String>> all = new ArrayList<>(grown);
            for (SortedSet<String> one : all) {
                if (all.stream().noneMatch(o -> o.size() < one.size() && one.containsAll(o))) {
                    out.add(one);
                }
            }
        }
        return out;
    }
}

package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.fit.FitCase;
import loopwright.fit.FoundLayout;
import loopwright.fit.ModSet;

/** What is worked through, and in what order: cheap mod sets first, so that bounds bite early. */
final class Work {
    private final FitCase fitCase;
    private final List<ModSet> valid;
    private final Map<ModSet, Build.Done> done = new HashMap<>();
    private final IdentityHashMap<List<FoundLayout>, List<ModSet>> sets = new IdentityHashMap<>();

    Work(FitCase fitCase, List<ModSet> valid) {
        this.fitCase = fitCase;
        this.valid = valid;
    }

    /** Layouts that take the same parts on the same mounts, together; likely good ones first. */
    List<List<FoundLayout>> inOrder(List<FoundLayout> fits) {
        Map<String, List<FoundLayout>> alike = new TreeMap<>();
        for (FoundLayout found : fits) {
            alike.computeIfAbsent(found.layout().partsText(), p -> new ArrayList<>())
                    .add(found);
        }
        List<List<FoundLayout>> out = new ArrayList<>(alike.values());
        out.sort(Comparator.comparingLong(group -> score(group.get(0))));
        return out;
    }

    /** Likely first ones of an order first. */
    List<List<FoundLayout>> byFigure(List<List<FoundLayout>> groups, Outlook outlook, Order order) {
        IdentityHashMap<List<FoundLayout>, Long> figures = new IdentityHashMap<>();
        for (List<FoundLayout> alike : groups) {
            long least = Long.MAX_VALUE;
            for (ModSet needed : alike.get(0).needed()) {
                least = Math.min(least, order.figure(outlook.bound(alike.get(0).layout(), done(needed))));
            }
            figures.put(alike, least);
        }
        List<List<FoundLayout>> out = new ArrayList<>(groups);
        out.sort(Comparator.comparingLong(figures::get));
        return out;
    }

    private long score(FoundLayout found) {
        int area = found.layout().stacks().stream()
                .mapToInt(s -> s.shape().pattern().fans() * s.shape().pattern().sizeMm())
                .sum();
        return (long) done(found.needed().get(0)).bill().handsOnMin() - 2L * area;
    }

    /** The valid sets with which some of the layouts fit: one that a smaller set fits with may still buy air. */
    List<ModSet> setsFor(List<FoundLayout> alike) {
        return sets.computeIfAbsent(alike, this::findSets);
    }

    private List<ModSet> findSets(List<FoundLayout> alike) {
        Set<ModSet> needed = new TreeSet<>();
        alike.forEach(f -> needed.addAll(f.needed()));
        List<ModSet> out = new ArrayList<>();
        for (ModSet set : valid) {
            for (ModSet one : needed) {
                if (one.isSubsetOf(set)) {
                    out.add(set);
                    break;
                }
            }
        }
        return List.copyOf(out);
    }

    Build.Done done(ModSet mods) {
        return done.computeIfAbsent(mods, m -> Build.Done.of(fitCase, m));
    }
}

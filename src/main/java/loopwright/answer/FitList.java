package loopwright.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.Shape;

/**
 * Layouts as a person reads them: what only leaves out a radiator, takes a thinner one or turns a port end is counted
 * under the layout that covers it, and the rest is grouped by what is mounted where.
 *
 * <p>A layout belongs to its smallest needed mod set, and is only covered by one that belongs to the same set.
 */
public final class FitList {

    private FitList() {}

    /**
     * A layout that stands for others.
     *
     * @param counted how many layouts it stands for, itself included
     */
    public record Entry(FoundLayout found, int counted) {
        /** Its smallest mod set. */
        public ModSet mods() {
            return found.needed().get(0);
        }
    }

    /**
     * What is mounted where.
     *
     * @param what like {@code roof 3x120 | floor 2x140}
     * @param entries smallest mod set first
     */
    public record Group(String what, List<Entry> entries) {
        /** How many layouts the group counts. */
        public int counted() {
            return entries.stream().mapToInt(Entry::counted).sum();
        }
    }

    /** Groups, those with the smallest mod set first, then by name. */
    public static List<Group> groups(List<FoundLayout> fits) {
        Map<ModSet, List<FoundLayout>> byMods = new TreeMap<>();
        for (FoundLayout found : fits) {
            byMods.computeIfAbsent(found.needed().get(0), m -> new ArrayList<>())
                    .add(found);
        }
        SortedMap<String, List<Entry>> groups = new TreeMap<>();
        for (List<FoundLayout> same : byMods.values()) {
            for (Entry entry : covering(same)) {
                groups.computeIfAbsent(what(entry.found().layout()), w -> new ArrayList<>())
                        .add(entry);
            }
        }
        List<Group> out = new ArrayList<>();
        groups.forEach((what, entries) -> {
            entries.sort(Comparator.comparing(Entry::mods)
                    .thenComparing(e -> -thickness(e.found().layout()))
                    .thenComparing(e -> e.found().layout().key()));
            out.add(new Group(what, List.copyOf(entries)));
        });
        out.sort(Comparator.comparing((Group g) -> g.entries().get(0).mods().size())
                .thenComparing(g -> -area(g.entries().get(0).found().layout()))
                .thenComparing(Group::what));
        return List.copyOf(out);
    }

    /** What is mounted where, without thicknesses. */
    public static String what(Layout layout) {
        return layout.stacks().stream()
                .map(s -> s.frame().mount().id() + " " + s.shape().pattern())
                .collect(Collectors.joining(" | "));
    }

    /** Fan area of all radiators, mm². */
    public static int area(Layout layout) {
        return layout.stacks().stream()
                .mapToInt(s -> s.shape().pattern().fans()
                        * s.shape().pattern().sizeMm()
                        * s.shape().pattern().sizeMm())
                .sum();
    }

    private static int thickness(Layout layout) {
        return layout.stacks().stream().mapToInt(s -> s.shape().thicknessHmm()).sum();
    }

    /**
     * Layouts that differ only in port ends, under the smallest key among them.
     *
     * @param shapes the text of each stack's shape without its end, in the order of the stacks
     */
    private record Turned(FoundLayout smallest, String key, int count, List<String> shapes) {}

    private static List<Entry> covering(List<FoundLayout> same) {
        Map<String, Turned> turned = new TreeMap<>();
        for (FoundLayout found : same) {
            List<String> shapes = found.layout().stacks().stream()
                    .map(s -> s.shape().textWithoutEnd())
                    .toList();
            String text = what(found.layout()) + shapes;
            turned.merge(text, new Turned(found, found.layout().key(), 1, shapes), FitList::merge);
        }
        List<Turned> all = new ArrayList<>(turned.values());
        all.sort(Comparator.comparing(Turned::key));
        List<Turned> top = top(all);
        Map<String, Integer> counts = new HashMap<>();
        for (Turned one : all) {
            Turned home = top.stream()
                    .filter(t -> t.key().equals(one.key()) || covers(t, one))
                    .findFirst()
                    .orElseThrow();
            counts.merge(home.key(), one.count(), Integer::sum);
        }
        return top.stream()
                .map(t -> new Entry(t.smallest(), counts.getOrDefault(t.key(), 0)))
                .toList();
    }

    /**
     * Those that no other covers, by key. What covers another has more radiators or thicker ones, and covering carries
     * over; so, largest first, each has only to be held against those already known to be on top.
     */
    private static List<Turned> top(List<Turned> all) {
        List<Turned> largestFirst = new ArrayList<>(all);
        largestFirst.sort(Comparator.comparingInt(
                        (Turned t) -> -t.smallest().layout().stacks().size())
                .thenComparingInt(t -> -thickness(t.smallest().layout())));
        List<Turned> top = new ArrayList<>();
        for (Turned one : largestFirst) {
            if (top.stream().noneMatch(t -> covers(t, one))) {
                top.add(one);
            }
        }
        top.sort(Comparator.comparing(Turned::key));
        return top;
    }

    private static Turned merge(Turned a, Turned b) {
        Turned smaller = a.key().compareTo(b.key()) <= 0 ? a : b;
        return new Turned(smaller.smallest(), smaller.key(), a.count() + b.count(), a.shapes());
    }

    /** Whether b only leaves out radiators of a, or takes thinner ones. */
    private static boolean covers(Turned a, Turned b) {
        List<Layout.Stack> big = a.smallest().layout().stacks();
        List<Layout.Stack> small = b.smallest().layout().stacks();
        int less = big.size() - small.size();
        int at = 0;
        for (int i = 0; i < small.size() && less >= 0; i++) {
            int mount = small.get(i).frame().index();
            while (at < big.size() && big.get(at).frame().index() < mount) {
                at++;
            }
            if (at == big.size() || big.get(at).frame().index() != mount) {
                return false;
            }
            if (!a.shapes().get(at).equals(b.shapes().get(i))) {
                if (!isThinner(small.get(i).shape(), big.get(at).shape())) {
                    return false;
                }
                less++;
            }
        }
        return less > 0;
    }

    private static boolean isThinner(Shape thin, Shape thick) {
        return thin.thicknessHmm() < thick.thicknessHmm()
                && thin.arrangement() == thick.arrangement()
                && thin.fanThickness().valueHmm() == thick.fanThickness().valueHmm()
                && thin.pattern().equals(thick.pattern());
    }
}

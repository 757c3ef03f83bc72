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

    /** Layouts that differ only in port ends, under the smallest key among them. */
    private record Turned(FoundLayout smallest, String key, int count) {}

    private static List<Entry> covering(List<FoundLayout> same) {
        Map<String, Turned> turned = new TreeMap<>();
        for (FoundLayout found : same) {
            String text = found.layout().stacks().stream()
                    .map(s -> s.frame().mount().id() + s.shape().textWithoutEnd())
                    .collect(Collectors.joining("|"));
            String key = found.layout().key();
            turned.merge(text, new Turned(found, key, 1), FitList::merge);
        }
        List<Turned> all = new ArrayList<>(turned.values());
        all.sort(Comparator.comparing(Turned::key));
        List<Turned> top = all.stream()
                .filter(t -> all.stream().noneMatch(o -> covers(o, t)))
                .toList();
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

    private static Turned merge(Turned a, Turned b) {
        Turned smaller = a.key().compareTo(b.key()) <= 0 ? a : b;
        return new Turned(smaller.smallest(), smaller.key(), a.count() + b.count());
    }

    /** Whether b only leaves out radiators of a, or takes thinner ones. */
    private static boolean covers(Turned a, Turned b) {
        return !a.key().equals(b.key())
                && covers(a.smallest().layout(), b.smallest().layout());
    }

    private static boolean covers(Layout a, Layout b) {
        int less = a.stacks().size() - b.stacks().size();
        if (less < 0) {
            return false;
        }
        int at = 0;
        for (Layout.Stack small : b.stacks()) {
            while (at < a.stacks().size()
                    && a.stacks().get(at).frame().index() < small.frame().index()) {
                at++;
            }
            if (at == a.stacks().size()
                    || a.stacks().get(at).frame().index() != small.frame().index()) {
                return false;
            }
            Shape big = a.stacks().get(at).shape();
            if (!big.textWithoutEnd().equals(small.shape().textWithoutEnd())) {
                if (!isThinner(small.shape(), big)) {
                    return false;
                }
                less++;
            }
        }
        return less > 0;
    }

    private static boolean isThinner(Shape thin, Shape thick) {
        return thin.pattern().equals(thick.pattern())
                && thin.arrangement() == thick.arrangement()
                && thin.fanThickness().valueHmm() == thick.fanThickness().valueHmm()
                && thin.thicknessHmm() < thick.thicknessHmm();
    }
}

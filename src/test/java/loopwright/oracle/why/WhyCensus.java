package loopwright.oracle.why;

import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** Counts in how many cases which kind of fact decides, after the corrections of the brute force. */
final class WhyCensus {
    private final SortedMap<String, Integer> cases = new TreeMap<>();

    void count(Set<SortedSet<String>> corrections) {
        SortedSet<String> kinds = new TreeSet<>(Set.of("cases"));
        for (SortedSet<String> correction : corrections) {
            for (String fact : correction) {
                boolean joint = fact.startsWith("clear:stack:") && fact.lastIndexOf(":stack:") > "clear:".length();
                kinds.add(fact.split(":", 2)[0] + (joint ? " of two stacks" : ""));
                kinds.add(fact.startsWith("parts:electric.") ? fact.substring("parts:".length()) : "cases");
                kinds.add(fact.equals("choice:fans") ? "choice of fans" : "cases");
            }
        }
        boolean conflict = corrections.stream().noneMatch(Set::isEmpty);
        kinds.add(conflict ? "a conflict" : "everything can be had");
        kinds.add(corrections.size() > 1 ? "several corrections" : "cases");
        kinds.add(corrections.isEmpty() ? "no candidate" : "cases");
        kinds.forEach(k -> cases.merge(k, 1, Integer::sum));
    }

    int of(String kind) {
        return cases.getOrDefault(kind, 0);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s", cases);
    }
}

package loopwright.oracle.rank;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Keeps what the enumeration finds; beaten points go, equal ones are counted. */
final class BruteKept {
    private final RankFault fault;
    private final SortedMap<RankAnswer.Point, Integer> unbeaten = new TreeMap<>();
    private final Map<By, SortedMap<String, BruteFigures>> best = new EnumMap<>(By.class);
    private long builds;
    private long feasible;

    BruteKept(RankFault fault) {
        this.fault = fault;
        for (By by : By.values()) {
            best.put(by, new TreeMap<>());
        }
    }

    void noteBuild() {
        builds++;
    }

    /**
     * Keeps what a build comes to at each duty at which it is feasible, the highest first: it counts once, as cool as it gets,
     * and in the list by noise as quiet as it gets.
     */
    void keep(String layout, List<BruteFigures> feasible) {
        if (fault == RankFault.EVERY_DUTY_COUNTS) {
            feasible.forEach(f -> keep(layout, f, f));
        } else if (!feasible.isEmpty()) {
            BruteFigures coolest = feasible.stream()
                    .min(Comparator.comparingLong(BruteFigures::coolantCentiK))
                    .orElseThrow();
            BruteFigures quietest = feasible.stream()
                    .min(Comparator.comparingLong(BruteFigures::soundMillionths)
                            .thenComparingLong(BruteFigures::coolantCentiK))
                    .orElseThrow();
            keep(layout, coolest, fault == RankFault.FAST_IN_THE_LIST_BY_NOISE ? coolest : quietest);
        }
    }

    private void keep(String layout, BruteFigures coolest, BruteFigures quietest) {
        feasible++;
        best.forEach((by, all) -> all.merge(
                sameParts(layout),
                by == By.NOISE ? quietest : coolest,
                (a, b) -> BruteFigures.order(by).compare(a, b) <= 0 ? a : b));
        countUnbeaten(coolest);
    }

    private void countUnbeaten(BruteFigures figures) {
        RankAnswer.Point point = new RankAnswer.Point(figures.priceCents(), figures.coolantCentiK());
        Integer equal = unbeaten.get(point);
        if (equal != null) {
            unbeaten.put(point, fault == RankFault.TIES_DROPPED ? 1 : equal + 1);
            return;
        }
        for (RankAnswer.Point has : unbeaten.headMap(new RankAnswer.Point(point.priceCents() + 1, 0))
                .keySet()) {
            if (has.beats(point)) {
                return;
            }
        }
        unbeaten.keySet().removeIf(point::beats);
        unbeaten.put(point, 1);
    }

    /** A layout text without port ends, and with the count of fan layers in place of the arrangement. */
    static String sameParts(String layout) {
        StringBuilder out = new StringBuilder();
        for (String stack : layout.split(" \\| ")) {
            String[] fields = stack.split("/");
            String layers = fields[fields.length - 2].endsWith("PUSH_PULL") ? "2" : "1";
            out.append(String.join("/", java.util.Arrays.copyOf(fields, fields.length - 2)))
                    .append('/')
                    .append(layers)
                    .append(" | ");
        }
        return out.toString();
    }

    RankAnswer answer(long solved) {
        Map<By, SortedMap<String, BruteFigures.ListFigures>> listed = new EnumMap<>(By.class);
        best.forEach((by, all) -> {
            SortedMap<String, BruteFigures.ListFigures> out = new TreeMap<>();
            all.forEach((layout, figures) -> out.put(layout, figures.listed(by)));
            listed.put(by, out);
        });
        return new RankAnswer(unbeaten, listed, new RankAnswer.Counts(builds, feasible, solved));
    }
}

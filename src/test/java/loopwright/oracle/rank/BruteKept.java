package loopwright.oracle.rank;

import java.util.EnumMap;
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

    void keep(String layout, BruteFigures figures) {
        feasible++;
        best.forEach((by, all) -> all.merge(
                sameParts(layout), figures, (a, b) -> BruteFigures.order(by).compare(a, b) <= 0 ? a : b));
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

    RankAnswer answer() {
        Map<By, SortedMap<String, BruteFigures.ListFigures>> listed = new EnumMap<>(By.class);
        best.forEach((by, all) -> {
            SortedMap<String, BruteFigures.ListFigures> out = new TreeMap<>();
            all.forEach((layout, figures) -> out.put(layout, figures.listed(by)));
            listed.put(by, out);
        });
        return new RankAnswer(unbeaten, listed, builds, feasible);
    }
}

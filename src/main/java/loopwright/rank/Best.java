package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import loopwright.fit.Layout;

/** Keeps the best build by an order for each set of layouts that take the same parts, and of those the first few. */
final class Best implements Goal {

    private final Order order;
    private final int count;
    private final Map<String, Build> byParts = new HashMap<>();

    Best(Order order, int count) {
        this.order = order;
        this.count = count;
    }

    @Override
    public boolean isHopeless(List<Layout> layouts, Bound bound) {
        boolean full = byParts.size() == count && worst() < order.figure(bound);
        for (Layout layout : layouts) {
            Build own = byParts.get(layout.partsText());
            boolean beaten = own == null ? full : order.figure(own.outcome()) < order.figure(bound);
            if (!beaten) {
                return false;
            }
        }
        return true;
    }

    private long worst() {
        return byParts.values().stream()
                .mapToLong(b -> order.figure(b.outcome()))
                .max()
                .orElse(Long.MAX_VALUE);
    }

    @Override
    public void offer(Layout layout, Build.Outcome outcome, Supplier<Build> build) {
        Build own = byParts.get(layout.partsText());
        if (own != null && order.outcomes().compare(own.outcome(), outcome) < 0) {
            return;
        }
        Build candidate = build.get();
        if (own == null || comparator().compare(candidate, own) < 0) {
            byParts.put(layout.partsText(), candidate);
        }
        if (byParts.size() > count) {
            byParts.values().remove(byParts.values().stream().max(comparator()).orElseThrow());
        }
    }

    private Comparator<Build> comparator() {
        return Comparator.comparing(Build::outcome, order.outcomes()).thenComparing(Build::key);
    }

    List<Build> inOrder() {
        List<Build> out = new ArrayList<>(byParts.values());
        out.sort(comparator());
        return out;
    }
}

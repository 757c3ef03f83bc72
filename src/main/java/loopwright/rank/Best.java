package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

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
    public boolean isHopeless(String parts, Bound bound) {
        Build own = byParts.get(parts);
        if (own != null) {
            return order.figure(own.outcome()) < order.figure(bound);
        }
        return byParts.size() == count && worst() < order.figure(bound);
    }

    @Override
    public boolean wantsEveryDuty() {
        return order == Order.NOISE;
    }

    private long worst() {
        return byParts.values().stream()
                .mapToLong(b -> order.figure(b.outcome()))
                .max()
                .orElse(Long.MAX_VALUE);
    }

    @Override
    public void offer(String parts, Build.Outcome outcome, Supplier<Build> build) {
        Build own = byParts.get(parts);
        if (own != null && order.outcomes().compare(own.outcome(), outcome) < 0) {
            return;
        }
        Build candidate = build.get();
        if (own == null || comparator().compare(candidate, own) < 0) {
            byParts.put(parts, candidate);
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

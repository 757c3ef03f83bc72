package loopwright.power.header;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.power.header.WiringPlan.PumpLine;
import loopwright.power.header.WiringTask.There;

/**
 * Feeds every fan and the pump, as cheaply as the catalogue's leads allow.
 *
 * <p>Rules, common practice but for the published limits of a fan and of a SATA plug: no header, splitter or hub is given more than its
 * planned share with all its fans starting; leads do not hang on leads; a pump has a header of its own, which feeds it or, where the
 * supply feeds it, counts its turns; a hub takes a free SATA plug and a header's signal.
 *
 * <p>Exact; of equally cheap ways the one with fewest leads, then by their names, then with groups kept together.
 */
public final class WiringSearch {

    private WiringSearch() {}

    /** The best plan; none if something cannot be fed: {@link WiringShortfall} says what. */
    public static Optional<WiringPlan> find(WiringTask task) {
        if (task.fans().stream().anyMatch(f -> !isFan(f, task.limits()))) {
            return Optional.empty();
        }
        if (task.pump().isEmpty()) {
            return new FanSearch(task, task.there().headers())
                    .find(task.there().sata())
                    .map(b -> new WiringPlan(b.branches(), Optional.empty()));
        }
        return withPump(task, task.pump().get());
    }

    /** Whether a fan is within what the specification allows one. */
    static boolean isFan(FanGroup fan, WiringLimits limits) {
        return fan.steadyMilliA() <= limits.fanSteadyMilliA() && fan.startMilliA() <= limits.fanStartMilliA();
    }

    private static Optional<WiringPlan> withPump(WiringTask task, PumpFeed pump) {
        if (!hasPlug(task, pump)) {
            return Optional.empty();
        }
        int sata = task.there().sata() - (pump.way() == PumpFeed.Way.SATA ? 1 : 0);
        Optional<FanSearch.Best> best = Optional.empty();
        Optional<WiringPlan> plan = Optional.empty();
        for (HeaderAt header : headersFor(task, pump)) {
            List<HeaderAt> others = new ArrayList<>(task.there().headers());
            others.remove(header);
            Optional<FanSearch.Best> fans = new FanSearch(task, others).find(sata);
            if (fans.isPresent() && (best.isEmpty() || fans.get().compareTo(best.get()) < 0)) {
                best = fans;
                plan = Optional.of(new WiringPlan(fans.get().branches(), Optional.of(new PumpLine(pump, header))));
            }
        }
        return plan;
    }

    /** Whether the supply has the plug, and it carries the pump's start. */
    static boolean hasPlug(WiringTask task, PumpFeed pump) {
        There there = task.there();
        return switch (pump.way()) {
            case HEADER -> true;
            case SATA -> there.sata() > 0 && pump.startMilliA() <= task.limits().sataMilliA();
            case PERIPHERAL ->
                there.peripheral() > 0 && pump.startMilliA() <= task.limits().peripheralMilliA();
        };
    }

    /**
     * Headers that would do for the pump, those made for it first; one that only counts turns is best the first for fans, where a board
     * looks for a fan that stands still.
     */
    static List<HeaderAt> headersFor(WiringTask task, PumpFeed pump) {
        boolean feeds = pump.way() == PumpFeed.Way.HEADER;
        return task.there().headers().stream()
                .filter(h -> !feeds || task.limits().allow(pump.startMilliA(), h.limitMilliA()))
                .sorted(Comparator.comparing((HeaderAt h) -> h.forPump() != feeds))
                .toList();
    }
}

package loopwright.power.header;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;
import loopwright.power.header.WiringTask.There;

/**
 * What is missing for fans and pump to be fed, and the cheapest cure among the catalogue's leads.
 *
 * @param missing connectors by name and number, or a limit that is passed
 * @param remedy what would do; empty where no lead of the catalogue does
 * @param leads to buy for it, beside those of the plan that then goes
 */
public record WiringShortfall(String missing, String remedy, List<Lead> leads) {

    /** More of anything than this is not tried. */
    private static final int MORE_MAX = 12;

    private static final double MILLI = 1000;

    /** Copies. */
    public WiringShortfall {
        leads = List.copyOf(leads);
    }

    /** What a task without a plan lacks; fewest connectors, of equally few the plugs of the supply before headers. */
    public static WiringShortfall of(WiringTask task, int usualLimitMilliA) {
        for (FanGroup fan : task.fans()) {
            if (!WiringSearch.isFan(fan, task.limits())) {
                return new WiringShortfall(
                        fan.fan() + " draws " + amps(fan.steadyMilliA()) + " A, starting " + amps(fan.startMilliA())
                                + " A: a fan may draw " + amps(task.limits().fanSteadyMilliA()) + " A and "
                                + amps(task.limits().fanStartMilliA()) + " A",
                        "another fan",
                        List.of());
            }
        }
        Optional<WiringShortfall> pump = task.pump().flatMap(p -> ofPump(task, p));
        return pump.orElseGet(() -> ofConnectors(task, usualLimitMilliA));
    }

    private static Optional<WiringShortfall> ofPump(WiringTask task, PumpFeed pump) {
        boolean header = pump.way() == PumpFeed.Way.HEADER;
        if (header && WiringSearch.headersFor(task, pump).isEmpty()) {
            return Optional.of(new WiringShortfall(
                    "a header for " + pump.pump() + ": it starts at " + amps(pump.startMilliA())
                            + " A, more than the planned share of any header",
                    "a pump that the supply feeds, or a board with a stronger header",
                    List.of()));
        }
        if (pump.way() == PumpFeed.Way.PERIPHERAL && !WiringSearch.hasPlug(task, pump)) {
            return Optional.of(new WiringShortfall(
                    "a 4-pin drive plug for " + pump.pump() + ", which starts at " + amps(pump.startMilliA()) + " A",
                    "a supply with such a plug",
                    List.of()));
        }
        return Optional.empty();
    }

    private static WiringShortfall ofConnectors(WiringTask task, int usualLimitMilliA) {
        for (int more = 1; more <= MORE_MAX; more++) {
            for (int headers = 0; headers <= more; headers++) {
                int sata = more - headers;
                if (WiringSearch.find(task.with(more(task.there(), headers, sata, usualLimitMilliA)))
                        .isPresent()) {
                    return lacking(task, headers, sata);
                }
            }
        }
        return new WiringShortfall(
                "a splitter or hub that carries these fans", "none of the catalogue's leads does", List.of());
    }

    private static There more(There there, int headers, int sata, int usualLimitMilliA) {
        List<HeaderAt> all = new ArrayList<>(there.headers());
        for (int i = 1; i <= headers; i++) {
            all.add(new HeaderAt("more-" + i, false, usualLimitMilliA));
        }
        return new There(all, there.sata() + sata, there.peripheral());
    }

    private static WiringShortfall lacking(WiringTask task, int headers, int sata) {
        List<String> missing = new ArrayList<>();
        List<String> remedy = new ArrayList<>();
        List<Lead> leads = sata > 0 ? cheapestSata(task, sata) : List.of();
        if (headers > 0) {
            missing.add(count(headers, "fan header"));
            remedy.add("a board with " + count(task.there().headers().size() + headers, "header"));
        }
        if (sata > 0) {
            missing.add(count(sata, "free SATA plug"));
            remedy.add(
                    leads.isEmpty()
                            ? "a supply with " + count(sata, "SATA plug") + " more"
                            : count(leads.size(), leads.get(0).id()));
        }
        return new WiringShortfall(String.join(" and ", missing), String.join(", and ", remedy), leads);
    }

    /** The cheapest leads of one kind that make so many SATA plugs; a splitter takes one and an adaptor an older plug. */
    private static List<Lead> cheapestSata(WiringTask task, int plugs) {
        return task.leads().stream()
                .filter(l -> l.to() == Plug.SATA && gained(l, task.there()) > 0)
                .map(l -> copies(l, (plugs + gained(l, task.there()) - 1) / gained(l, task.there())))
                .filter(all -> all.get(0).from() != Plug.PERIPHERAL_4
                        || all.size() <= task.there().peripheral())
                .min(Comparator.comparingLong((List<Lead> all) -> all.stream()
                                .mapToLong(l -> l.buy().priceCents())
                                .sum())
                        .thenComparing(all -> all.get(0).id()))
                .orElse(List.of());
    }

    private static int gained(Lead lead, There there) {
        if (lead.from() == Plug.SATA) {
            return lead.kind() == Lead.Kind.SPLITTER ? lead.outlets() - 1 : 0;
        }
        return lead.from() == Plug.PERIPHERAL_4 && there.peripheral() > 0 ? lead.outlets() : 0;
    }

    private static List<Lead> copies(Lead lead, int count) {
        return java.util.Collections.nCopies(count, lead);
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }

    private static String amps(int milliA) {
        return String.format(Locale.ROOT, "%.2f", milliA / MILLI);
    }
}

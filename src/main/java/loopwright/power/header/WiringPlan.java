package loopwright.power.header;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import loopwright.catalog.part.Lead;

/**
 * What feeds what.
 *
 * @param branches headers that fans hang on, in the board's order
 * @param pump what feeds the pump
 */
public record WiringPlan(List<Branch> branches, Optional<PumpLine> pump) {

    /** Copies. */
    public WiringPlan {
        branches = List.copyOf(branches);
    }

    /**
     * A header with what hangs on it.
     *
     * @param lead a splitter or a hub; none where one fan is plugged in itself
     * @param counts fans of each group, in the task's order
     * @param startMilliA all of them starting
     * @param limitMilliA of what gives the current: header, splitter or hub, whichever gives least
     */
    public record Branch(HeaderAt header, Optional<Lead> lead, List<Integer> counts, int startMilliA, int limitMilliA) {

        /** Copies. */
        public Branch {
            counts = List.copyOf(counts);
        }

        /** Whether the supply gives the current, and the header only the signal. */
        public boolean isHub() {
            return lead.filter(l -> l.kind() == Lead.Kind.HUB).isPresent();
        }
    }

    /** The pump and its header: its current comes from there too, or from the supply. */
    public record PumpLine(PumpFeed feed, HeaderAt header) {}

    /** The leads to buy. */
    public List<Lead> leads() {
        return branches.stream().flatMap(b -> b.lead().stream()).toList();
    }

    /** What they cost. */
    public long cents() {
        return leads().stream().mapToLong(l -> l.buy().priceCents()).sum();
    }

    /** SATA plugs that hubs and the pump take. */
    public long sata() {
        return Stream.concat(
                        branches.stream().filter(Branch::isHub),
                        pump.filter(p -> p.feed().way() == PumpFeed.Way.SATA).stream())
                .count();
    }
}

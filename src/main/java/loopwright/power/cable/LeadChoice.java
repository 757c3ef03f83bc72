package loopwright.power.cable;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Lead;
import loopwright.catalog.part.Plug;

/**
 * The extension leads that cure a cable which is too short: one, or a chain of two.
 *
 * <p>The cheapest that are long enough; of equally dear ones the fewer, then the shorter, then by id.
 *
 * @param leads one or two
 */
public record LeadChoice(List<Lead> leads) {

    /** Copies. */
    public LeadChoice {
        leads = List.copyOf(leads);
    }

    /** What they cost, cents. */
    public long priceCents() {
        return leads.stream().mapToLong(l -> l.buy().priceCents()).sum();
    }

    /** How much longer they make it, mm. */
    public double lengthMm() {
        return leads.stream().mapToDouble(Lead::lengthMm).sum();
    }

    /** The best of a catalogue; empty where none is long enough. */
    public static Optional<LeadChoice> of(List<Lead> catalogue, Plug plug, int lacksMm) {
        List<Lead> usable = catalogue.stream()
                .filter(l -> l.kind() == Lead.Kind.EXTENSION && l.from() == plug && l.to() == plug)
                .toList();
        List<LeadChoice> all = new ArrayList<>();
        for (int i = 0; i < usable.size(); i++) {
            all.add(new LeadChoice(List.of(usable.get(i))));
            for (int j = i; j < usable.size(); j++) {
                all.add(new LeadChoice(List.of(usable.get(i), usable.get(j))));
            }
        }
        return all.stream()
                .filter(c -> c.lengthMm() >= lacksMm)
                .min(Comparator.comparingLong(LeadChoice::priceCents)
                        .thenComparingInt(c -> c.leads().size())
                        .thenComparingDouble(LeadChoice::lengthMm)
                        .thenComparing(
                                c -> c.leads().stream().map(Lead::id).toList().toString()));
    }
}

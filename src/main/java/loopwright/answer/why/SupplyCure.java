package loopwright.answer.why;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Supply;
import loopwright.fit.FitCase;
import loopwright.fit.PartRuleList;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.PartRule;
import loopwright.fit.rules.Role;

/** The cheapest supply of the catalogue that keeps every electrical rule with the other parts; whether it fits is another question. */
final class SupplyCure {

    private static final String ELECTRIC = "electric.";

    /** What no supply cures. */
    private static final String BOARD_ONLY = "electric.board-processor-plugs";

    private final FitCase fitCase;

    SupplyCure(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    /** {@code ; cheapest supply that would: ...}; nothing for a rule that no supply cures. */
    String words(String rule, Chosen parts) {
        if (!rule.startsWith(ELECTRIC) || rule.equals(BOARD_ONLY)) {
            return "";
        }
        return find(parts)
                .map(s -> "; cheapest supply of the catalogue for these parts: " + s.id() + ", "
                        + java.math.BigDecimal.valueOf(s.buy().priceCents(), 2).toPlainString() + " "
                        + fitCase.brief().terms().currency())
                .orElse("; no supply of the catalogue does for these parts");
    }

    /** The cheapest, then by id. */
    Optional<Supply> find(Chosen parts) {
        List<PartRule> rules = PartRuleList.of(fitCase).stream()
                .filter(r -> r.id().startsWith(ELECTRIC) && !r.id().equals(BOARD_ONLY))
                .toList();
        return fitCase.catalog().all(Supply.class).stream()
                .filter(s -> rules.stream().allMatch(r -> PartRuleList.isKept(r, with(parts, s))))
                .min(Comparator.comparingLong((Supply s) -> s.buy().priceCents())
                        .thenComparing(Supply::id));
    }

    private static Chosen with(Chosen parts, Supply supply) {
        Map<Role, Part> out = new EnumMap<>(Role.class);
        out.putAll(parts.parts());
        out.put(Role.SUPPLY, supply);
        return new Chosen(out);
    }
}

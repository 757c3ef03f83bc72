package loopwright.fit;

import java.util.EnumSet;
import java.util.Set;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.rules.PartRule;
import loopwright.fit.rules.Role;

/**
 * Which parts outside the brief's choice are looked at.
 *
 * <p>A part in another's stead only helps if some correction without it has a fact about that part: otherwise the same candidate with
 * the brief's own part already breaks no more than a known correction. So corrections among the brief's own parts are found first,
 * and tell where to look further.
 *
 * @param roles those for which the whole catalogue is looked at, one at a time
 * @param fans whether the catalogue's other fan thicknesses are
 */
record Beyond(Set<Role> roles, boolean fans) {

    /** Only what the brief chooses. */
    static final Beyond NOTHING = new Beyond(Set.of(), false);

    /** Where parts may help with corrections among the brief's own. */
    static Beyond helpsWith(Iterable<FactSet> corrections, FactBook book, WishedCase wished) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        boolean fans = false;
        for (FactSet correction : corrections) {
            for (Fact fact : book.facts(correction)) {
                boolean body = fact.kind() == Fact.Kind.CLEAR || fact.kind() == Fact.Kind.KNOWN;
                fans |= body && fact.about().contains("stack:");
                for (Role role : Role.values()) {
                    if (isAbout(fact, role, body, wished)) {
                        roles.add(role);
                    }
                }
            }
        }
        return new Beyond(roles, fans);
    }

    private static boolean isAbout(Fact fact, Role role, boolean body, WishedCase wished) {
        if (fact.kind() == Fact.Kind.PARTS) {
            return PartModel.rules(wished.asked()).stream()
                    .filter(r -> r.id().equals(fact.about()))
                    .anyMatch(r -> roles(r).contains(role));
        }
        // On the board everything stands where the board says.
        boolean onBoard = role == Role.BOARD;
        if (body) {
            String about = ":" + fact.about() + ":";
            boolean named = about.contains(":" + role.word() + ":");
            boolean standsOnIt =
                    onBoard && (about.contains(":memory:") || about.contains(":block:") || about.contains(":card:"));
            return named || standsOnIt;
        }
        boolean pumpsReservoir = role == Role.PUMP && fact.about().equals("reservoir");
        return fact.kind() == Fact.Kind.PLACE && (fact.about().equals(role.word()) || pumpsReservoir);
    }

    private static Set<Role> roles(PartRule rule) {
        if (rule instanceof PartRule.TupleRule tuple) {
            return EnumSet.copyOf(tuple.roles());
        }
        return EnumSet.copyOf(((PartRule.SumRule) rule).roles());
    }

    boolean isNothing() {
        return roles.isEmpty() && !fans;
    }
}

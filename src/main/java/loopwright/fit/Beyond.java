package loopwright.fit;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Place.Holds;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.rules.PartRule;
import loopwright.fit.rules.Role;

/**
 * Which parts outside the brief's choice are looked at.
 *
 * <p>A part in another's stead only helps if some correction without it has a fact about that part: otherwise the same candidate with
 * the brief's own part already breaks no more than a known correction. So corrections among the brief's own parts are found first,
 * and tell where to look further. A role for which the brief has no part is looked at in any case; a part in another place may make
 * room for any other where places hold several kinds; a pump decides whether there is a reservoir.
 *
 * @param roles those for which the whole catalogue is looked at, one at a time
 * @param fans whether the catalogue's other fan thicknesses are
 */
record Beyond(Set<Role> roles, boolean fans) {

    private static final Set<Fact.Kind> ABOUT_MOUNTS = Set.of(Fact.Kind.SEAT, Fact.Kind.OPEN, Fact.Kind.OUTSIDE);
    private static final List<String> ON_BOARD = List.of("memory", "block", "card");
    private static final List<String> IN_PLACES = List.of("supply", "drive", "pump", "reservoir");
    private static final Map<Role, Set<Holds>> PLACED = Map.of(
            Role.SUPPLY, Set.of(Holds.ATX, Holds.SFX, Holds.SFX_L),
            Role.PUMP, Set.of(Holds.PUMP, Holds.PUMP_RESERVOIR),
            Role.RESERVOIR, Set.of(Holds.RESERVOIR));

    /** Only what the brief chooses. */
    static final Beyond NOTHING = new Beyond(Set.of(), false);

    /** Where parts may help with corrections among the brief's own. */
    static Beyond helpsWith(Iterable<FactSet> corrections, FactBook book, WishedCase wished) {
        Set<Role> roles = EnumSet.noneOf(Role.class);
        boolean fans = hasSizeWithoutFans(wished);
        for (Role role : Role.values()) {
            if (wished.ownParts(role).isEmpty()) {
                fans = true;
                roles.add(role);
                roles.addAll(role == Role.RESERVOIR ? Set.of(Role.PUMP) : Set.of());
            }
        }
        for (FactSet correction : corrections) {
            for (Fact fact : book.facts(correction)) {
                boolean body = fact.kind() == Fact.Kind.CLEAR || fact.kind() == Fact.Kind.KNOWN;
                // Thinner fans may go into a cover, which brings holes and openness and asks for no air outside.
                fans |= (body && fact.about().contains("stack:")) || ABOUT_MOUNTS.contains(fact.kind());
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
        if (fact.kind() == Fact.Kind.WISH) {
            return role == Role.PUMP
                    && wished.wishes(Wish.PartIs.class).stream()
                            .anyMatch(
                                    w -> w.role() == Role.RESERVOIR && w.text().equals(fact.about()));
        }
        if (!body && fact.kind() != Fact.Kind.PLACE) {
            return false;
        }
        String about = ":" + fact.about() + ":";
        // On the board everything stands where the board says.
        return isNamed(about, role.word())
                || (role == Role.BOARD && ON_BOARD.stream().anyMatch(w -> isNamed(about, w)))
                || (role == Role.PUMP && isNamed(about, Role.RESERVOIR.word()))
                || (IN_PLACES.stream().anyMatch(w -> isNamed(about, w)) && sharesPlaces(role, wished));
    }

    private static boolean isNamed(String about, String word) {
        return about.contains(":" + word + ":");
    }

    /** Whether the brief has no fans at all for some radiator. */
    private static boolean hasSizeWithoutFans(WishedCase wished) {
        Set<Pattern> own = new HashSet<>();
        List<Shape> all = wished.widened().shapes().all();
        all.stream().filter(wished::hasOwnFans).map(Shape::pattern).forEach(own::add);
        return all.stream().anyMatch(s -> !own.contains(s.pattern()));
    }

    /** Whether some place could hold a part of the role or something else. */
    private static boolean sharesPlaces(Role role, WishedCase wished) {
        Set<Holds> forms = PLACED.getOrDefault(role, Set.of());
        return wished.asked().chassis().inside().places().stream()
                .anyMatch(p -> p.holds().stream().anyMatch(forms::contains) && !forms.containsAll(p.holds()));
    }

    private static Set<Role> roles(PartRule rule) {
        if (rule instanceof PartRule.TupleRule tuple) {
            return EnumSet.copyOf(tuple.roles());
        }
        return EnumSet.copyOf(((PartRule.SumRule) rule).roles());
    }

    /** What either looks at. */
    Beyond or(Beyond other) {
        Set<Role> all = EnumSet.noneOf(Role.class);
        all.addAll(roles);
        all.addAll(other.roles);
        return new Beyond(all, fans || other.fans);
    }
}

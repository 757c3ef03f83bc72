package loopwright.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Pump;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.PartRule;
import loopwright.fit.rules.Role;

/** Choices of parts with the facts and wishes that they break; those are left out that another is no worse than in anything. */
final class PartFacts {

    /** Most choices looked at one by one; beyond it parts outside the brief's choice are left out. */
    private static final long CHOICES_MAX = 300_000;

    private final WishedCase wished;
    private final FactBook book;
    private final Set<Role> outside;
    private final List<PartRule> rules;
    private final Map<FactSet, List<Chosen>> byBroken = new LinkedHashMap<>();
    private final List<Role> leftOut = new ArrayList<>();

    /**
     * Choices of parts.
     *
     * @param outside roles for which the catalogue's other parts are looked at too, one role at a time
     */
    PartFacts(WishedCase wished, FactBook book, Set<Role> outside) {
        this.outside = outside;
        this.wished = wished;
        this.book = book;
        this.rules = PartModel.rules(wished.asked());
    }

    /**
     * Choices of parts that take the same room and break the same.
     *
     * @param set its number is its place in the list
     */
    record Broken(PartSet set, FactSet facts) {}

    /** The choices; {@link #isWhole} afterwards. */
    List<Broken> all() {
        enumerate(Optional.empty());
        outside.forEach(role -> enumerate(Optional.of(role)));
        List<Broken> out = new ArrayList<>();
        Strictness strictness = wished.asked().strictness();
        byBroken.forEach((broken, choices) -> {
            for (PartSet set : PartSet.smallest(PartSet.group(choices, strictness), strictness)) {
                boolean spare = out.stream()
                        .anyMatch(o -> o.facts().isSubsetOf(broken) && o.set().isWithin(set, strictness));
                if (!spare) {
                    out.add(new Broken(new PartSet(out.size(), set.example(), set.choices()), broken));
                }
            }
        });
        return List.copyOf(out);
    }

    /** Whether every part was looked at; if not, some outside the brief's choice were too many. */
    boolean isWhole() {
        return leftOut.isEmpty();
    }

    private void enumerate(Optional<Role> other) {
        Map<Role, List<Part>> parts = new EnumMap<>(Role.class);
        long count = 1;
        for (Role role : Role.values()) {
            List<Part> some =
                    other.filter(r -> r == role).isPresent() ? wished.otherParts(role) : wished.ownParts(role);
            parts.put(role, some);
            count *= some.size() + (role == Role.RESERVOIR ? 1 : 0);
        }
        if (count > CHOICES_MAX && other.isPresent()) {
            leftOut.add(other.get());
        } else {
            choose(parts, 0, new EnumMap<>(Role.class), other);
        }
    }

    private static final List<Role> ROLES = List.of(Role.values());

    private void choose(Map<Role, List<Part>> parts, int at, Map<Role, Part> chosen, Optional<Role> other) {
        if (at == ROLES.size()) {
            note(new Chosen(chosen), other);
            return;
        }
        Role role = ROLES.get(at);
        if (role == Role.RESERVOIR && hasItsOwn(chosen)) {
            if (other.filter(r -> r == Role.RESERVOIR).isEmpty()) {
                choose(parts, at + 1, chosen, other);
            }
            return;
        }
        for (Part part : parts.getOrDefault(role, List.of())) {
            chosen.put(role, part);
            choose(parts, at + 1, chosen, other);
        }
        chosen.remove(role);
    }

    private static boolean hasItsOwn(Map<Role, Part> chosen) {
        return new Chosen(chosen).the(Role.PUMP, Pump.class).kind() != Pump.Kind.PUMP;
    }

    private void note(Chosen chosen, Optional<Role> other) {
        List<Integer> broken = new ArrayList<>();
        other.ifPresent(r -> broken.add(book.number(Fact.Kind.CHOICE, r.word())));
        for (PartRule rule : rules) {
            if (!isKept(rule, chosen)) {
                broken.add(book.number(Fact.Kind.PARTS, rule.id()));
            }
        }
        for (Wish.PartIs wish : wished.wishes(Wish.PartIs.class)) {
            if (!wish.id()
                    .equals(Optional.ofNullable(chosen.parts().get(wish.role()))
                            .map(Part::id)
                            .orElse(""))) {
                broken.add(book.number(Fact.Kind.WISH, wish.text()));
            }
        }
        byBroken.computeIfAbsent(FactSet.of(broken), b -> new ArrayList<>()).add(chosen);
    }

    static boolean isKept(PartRule rule, Chosen chosen) {
        if (rule instanceof PartRule.TupleRule tuple) {
            return tuple.allows(chosen);
        }
        PartRule.SumRule sum = (PartRule.SumRule) rule;
        long total = sum.constant();
        for (Role role : sum.roles()) {
            Part part = chosen.parts().get(role);
            total += part == null ? 0 : sum.contribution(role, part);
        }
        return total >= 0;
    }
}

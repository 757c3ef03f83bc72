package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.rules.ModRule;

/** The facts and wishes that mod sets break. */
final class ModFacts {

    private final WishedCase wished;
    private final FactBook book;
    private final List<ModRule> rules;

    ModFacts(WishedCase wished, FactBook book) {
        this.wished = wished;
        this.book = book;
        this.rules = ModRules.of(wished.asked(), FitWish.ALL);
    }

    /** What a set breaks. */
    FactSet broken(ModSet mods) {
        List<Mod> done = mods.mods(wished.asked().chassis());
        Set<String> ids = new TreeSet<>();
        done.forEach(m -> ids.add(m.id()));
        List<Integer> out = new ArrayList<>();
        for (ModRule rule : rules) {
            if (isBroken(rule, ids, done)) {
                out.add(number(rule));
            }
        }
        for (Wish wish : wished.wishes()) {
            boolean lacks = wish instanceof Wish.ModDone d && !ids.contains(d.mod());
            boolean has = wish instanceof Wish.ModNotDone n && ids.contains(n.mod());
            if (lacks || has) {
                out.add(book.number(Fact.Kind.WISH, wish.text()));
            }
        }
        return FactSet.of(out);
    }

    private static boolean isBroken(ModRule rule, Set<String> ids, List<Mod> done) {
        if (rule instanceof ModRule.Requires r) {
            return ids.contains(r.mod()) && !ids.contains(r.required());
        } else if (rule instanceof ModRule.Excludes e) {
            return ids.contains(e.mod()) && ids.contains(e.other());
        } else if (rule instanceof ModRule.Forbidden f) {
            return ids.contains(f.mod());
        } else if (rule instanceof ModRule.Fixed f) {
            return !ids.contains(f.mod());
        } else if (rule instanceof ModRule.CutsAtMost c) {
            return cuts(done, c.visibleOnly()) > c.cuts();
        }
        throw new IllegalStateException("a rule that is not known here: " + rule);
    }

    static int cuts(List<Mod> done, boolean visibleOnly) {
        return done.stream()
                .mapToInt(m ->
                        m.look().visibleCuts() + (visibleOnly ? 0 : m.look().hiddenCuts()))
                .sum();
    }

    private int number(ModRule rule) {
        if (rule instanceof ModRule.Requires r) {
            return book.number(Fact.Kind.NEEDS, r.mod() + ":" + r.required());
        } else if (rule instanceof ModRule.Excludes e) {
            boolean ordered = e.mod().compareTo(e.other()) <= 0;
            return book.number(Fact.Kind.EXCLUDES, ordered ? e.mod() + ":" + e.other() : e.other() + ":" + e.mod());
        } else if (rule instanceof ModRule.Forbidden f) {
            return book.number(Fact.Kind.FORBIDDEN, f.mod());
        } else if (rule instanceof ModRule.CutsAtMost c) {
            return book.number(c.visibleOnly() ? Fact.Kind.VISIBLE_CUTS : Fact.Kind.CUTS, "");
        }
        throw new IllegalStateException("a rule that no brief makes: " + rule);
    }
}

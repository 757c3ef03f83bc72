package loopwright.oracle.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.fit.Breaches;
import loopwright.fit.Candidate;
import loopwright.fit.Fact;
import loopwright.fit.FitCase;
import loopwright.fit.Wish;
import loopwright.fit.WishedCase;
import loopwright.fit.conflict.FactSet;
import loopwright.fit.conflict.HittingSets;
import loopwright.fit.rules.Role;
import loopwright.oracle.OracleCase;
import loopwright.oracle.WhyQuestion;
import loopwright.oracle.brute.WhyWish;

/** What the production code says to a question, in ids. */
final class ProductionWhy {
    final WhyQuestion question;
    final Breaches breaches;
    final List<Candidate> smallest;

    ProductionWhy(WhyQuestion question) {
        this.question = question;
        OracleCase asked = question.question();
        FitCase fitCase = new FitCase(asked.catalog(), asked.chassis(), asked.brief());
        boolean somewhere = question.wishes().stream().anyMatch(w -> w.text().equals("radiator"));
        List<Wish> wishes = somewhere
                ? List.of()
                : question.wishes().stream().map(ProductionWhy::wish).toList();
        this.breaches = new Breaches(new WishedCase(fitCase, wishes), () -> false);
        Breaches.Corrections found = breaches.run();
        if (!found.whole()) {
            throw new IllegalStateException("not whole though nothing stopped it");
        }
        this.smallest = found.smallest();
    }

    private static Wish wish(WhyWish wish) {
        if (wish instanceof WhyWish.RadiatorOn r) {
            return new Wish.RadiatorAt(r.text(), r.mounts(), new Wish.Pick(r.pattern(), r.thicknessHmm(), r.id()));
        } else if (wish instanceof WhyWish.NothingOn n) {
            return new Wish.NothingAt(n.text(), n.mount());
        } else if (wish instanceof WhyWish.PartFor p) {
            return new Wish.PartIs(p.text(), Role.valueOf(p.role().toUpperCase(Locale.ROOT)), p.id());
        } else if (wish instanceof WhyWish.With w) {
            return new Wish.ModDone(w.text(), w.mod());
        } else if (wish instanceof WhyWish.Without w) {
            return new Wish.ModNotDone(w.text(), w.mod());
        }
        throw new IllegalArgumentException(wish.toString());
    }

    static Set<SortedSet<String>> sets() {
        return new TreeSet<>(Comparator.comparing(Object::toString));
    }

    SortedSet<String> ids(FactSet set) {
        return breaches.book().facts(set).stream().map(Fact::id).collect(Collectors.toCollection(TreeSet::new));
    }

    Set<SortedSet<String>> corrections() {
        Set<SortedSet<String>> out = sets();
        smallest.forEach(c -> out.add(ids(c.broken())));
        return out;
    }

    /** Uncapped. */
    List<FactSet> conflictSets() {
        List<FactSet> all = new ArrayList<>();
        smallest.forEach(c -> all.add(c.broken()));
        return HittingSets.all(all);
    }

    Set<SortedSet<String>> conflicts() {
        Set<SortedSet<String>> out = sets();
        conflictSets().forEach(c -> out.add(ids(c)));
        return out;
    }
}

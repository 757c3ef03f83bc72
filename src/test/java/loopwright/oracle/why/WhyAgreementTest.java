package loopwright.oracle.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.LongStream;
import loopwright.fit.Candidate;
import loopwright.fit.Fact;
import loopwright.fit.Lacking;
import loopwright.fit.MountFrame;
import loopwright.fit.conflict.FactSet;
import loopwright.oracle.WhyQuestion;
import loopwright.oracle.brute.BruteWhy;
import loopwright.oracle.brute.WhyFault;
import loopwright.oracle.brute.WhyWish;
import loopwright.oracle.cases.WhyCases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Corrections and conflicts of the production search against a brute force written from why.md alone. */
class WhyAgreementTest {

    /** Seeds of every run; {@code -Dwhy.seeds=0-1000} asks for others. */
    private static final String SEEDS = System.getProperty("why.seeds", "0-160");

    /** Most conflicts of a case that are each asked again, and most corrections whose positions are walked. */
    private static final int ASKED_MAX = 12;

    private static LongStream seeds() {
        String[] ends = SEEDS.split("-");
        return LongStream.range(Long.parseLong(ends[0]), Long.parseLong(ends[1]));
    }

    private static String about(WhyQuestion q) {
        return "seed " + q.question().seed() + " "
                + q.wishes().stream().map(WhyWish::text).toList();
    }

    private static BruteWhy brute(WhyQuestion q, WhyFault fault) {
        return new BruteWhy(q.question(), q.wishes(), fault);
    }

    @Test
    void saysWhatBruteForceSays() {
        WhyCensus census = new WhyCensus();
        int[] lacks = new int[1];
        seeds().forEach(seed -> {
            WhyQuestion q = WhyCases.generate(seed);
            ProductionWhy production = new ProductionWhy(q);
            BruteWhy brute = brute(q, WhyFault.NONE);
            Set<SortedSet<String>> corrections = brute.corrections();
            census.count(corrections);
            assertThat(production.corrections()).as("%s: corrections", about(q)).isEqualTo(corrections);
            Set<SortedSet<String>> conflicts = BruteConflicts.of(corrections);
            assertThat(production.conflicts()).as("%s: conflicts", about(q)).isEqualTo(conflicts);
            assertThat(onlyWishes(corrections))
                    .as("%s: wishes to drop", about(q))
                    .isEqualTo(droppedWishes(conflicts));
            assertThat(production.breaches.whole().isPresent())
                    .as("%s: everything can be had", about(q))
                    .isEqualTo(corrections.equals(Set.of(new TreeSet<String>())));
            asksAgain(production);
            lacks[0] += lacks(production, brute);
        });
        assertHard(census);
        assertThat(lacks[0]).as("lacks measured").isGreaterThan(seeds().toArray().length / 4);
    }

    private static void assertHard(WhyCensus census) {
        assertThat(census.of("a conflict") * 2).as("%s", census).isGreaterThan(census.of("cases"));
        assertThat(census.of("several corrections") * 3).as("%s", census).isGreaterThan(census.of("cases"));
        for (String kind : List.of(
                "everything can be had",
                "wish",
                "forbidden",
                "needs",
                "excludes",
                "visible-cuts",
                "cuts",
                "choice",
                "choice of fans",
                "parts",
                "place",
                "seat",
                "open",
                "outside",
                "known",
                "clear",
                "clear of two stacks",
                "electric.twelve-volt",
                "electric.low-rails",
                "electric.surge",
                "electric.surge-reserve",
                "electric.processor-plugs",
                "electric.board-processor-plugs",
                "electric.card-plugs",
                "electric.card-coding",
                "electric.card-cables")) {
            assertThat(census.of(kind)).as("%s in %s", kind, census).isPositive();
        }
    }

    private static Set<SortedSet<String>> onlyWishes(Set<SortedSet<String>> corrections) {
        Set<SortedSet<String>> out = ProductionWhy.sets();
        corrections.stream()
                .filter(c -> c.stream().allMatch(f -> f.startsWith("wish:")))
                .forEach(out::add);
        return out;
    }

    /** Minimal sets of wishes that meet every conflict; none if some conflict has no wish. */
    private static Set<SortedSet<String>> droppedWishes(Set<SortedSet<String>> conflicts) {
        Set<SortedSet<String>> wishes = ProductionWhy.sets();
        for (SortedSet<String> conflict : conflicts) {
            SortedSet<String> some = new TreeSet<>(conflict);
            some.removeIf(f -> !f.startsWith("wish:"));
            wishes.add(some);
        }
        return BruteConflicts.byGrowing(wishes);
    }

    /** A conflict cannot hold; without any one of its members it can. */
    private static void asksAgain(ProductionWhy production) {
        for (FactSet conflict :
                production.conflictSets().stream().limit(ASKED_MAX).toList()) {
            String about = about(production.question) + ": " + production.ids(conflict);
            assertThat(production.breaches.canHold(conflict)).as(about).isFalse();
            for (int member : conflict.numbers()) {
                assertThat(production.breaches.canHold(conflict.without(member)))
                        .as("%s without %s", about, production.breaches.book().fact(member))
                        .isTrue();
            }
        }
    }

    /** Every pair that a candidate breaks lacks something; where it is only one, as much as at the best position. */
    private static int lacks(ProductionWhy production, BruteWhy brute) {
        int measured = 0;
        for (Candidate candidate : production.smallest.stream().limit(ASKED_MAX).toList()) {
            SortedSet<String> broken = production.ids(candidate.broken());
            String about = about(production.question) + ": " + broken;
            Map<String, Integer> lacks = new TreeMap<>();
            for (Lacking.Lack lack : production.breaches.lacks(candidate)) {
                assertThat(lack.lackHmm()).as(about).isPositive();
                lacks.put(lack.fact().id(), lack.lackHmm());
            }
            SortedSet<String> clear = new TreeSet<>(broken);
            clear.removeIf(f -> !f.startsWith("clear:"));
            assertThat(lacks.keySet()).as(about).isEqualTo(clear);
            if (lacks.size() == 1) {
                assertThat(brute.lacksHmm(told(production, candidate), broken, clear.first()))
                        .as(about)
                        .contains(lacks.get(clear.first()));
                measured++;
            }
        }
        return measured;
    }

    private static BruteWhy.Told told(ProductionWhy production, Candidate candidate) {
        Map<String, String> parts = new HashMap<>();
        candidate.parts().parts().forEach((role, part) -> parts.put(role.word(), part.id()));
        Map<String, String> shapes = new LinkedHashMap<>();
        for (MountFrame frame : production.breaches.wished().widened().frames()) {
            Optional<String> text = candidate.shapeAt(frame).map(s -> s.text());
            text.ifPresent(t -> shapes.put(frame.mount().id(), t));
        }
        return new BruteWhy.Told(
                new TreeSet<>(
                        candidate.mods().ids(production.question.question().chassis())),
                parts,
                shapes);
    }

    /** Each planted mistake gives another answer than production on one of the default seeds. */
    @ParameterizedTest
    @EnumSource(value = WhyFault.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void aMistakeIsCaught(WhyFault fault) {
        boolean caught = seeds().anyMatch(seed -> {
            WhyQuestion q = WhyCases.generate(seed);
            return !brute(q, fault).corrections().equals(new ProductionWhy(q).corrections());
        });
        assertThat(caught).as("%s on seeds %s", fault, SEEDS).isTrue();
    }

    /** Every fact that is said has one of the ids of why.md. */
    @Test
    void namesFactsAsThePageDoes() {
        Set<String> words = new TreeSet<>();
        for (Fact.Kind kind : Fact.Kind.values()) {
            words.add(kind.word());
        }
        assertThat(words)
                .containsExactly(
                        "choice",
                        "clear",
                        "cuts",
                        "excludes",
                        "forbidden",
                        "known",
                        "needs",
                        "open",
                        "outside",
                        "parts",
                        "place",
                        "seat",
                        "visible-cuts",
                        "wish");
    }
}

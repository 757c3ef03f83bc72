package loopwright.fit.conflict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Conflicts and corrections of clauses, against published shapes of examples and against looking at every subset. */
final class ConflictSearchTest {

    /** A clause: +v for a variable, −v for its negation, variables from 1. */
    private record Clauses(int variables, List<List<Integer>> all) {

        static Clauses of(int variables, int[]... clauses) {
            return new Clauses(
                    variables,
                    Arrays.stream(clauses)
                            .map(c -> Arrays.stream(c).boxed().toList())
                            .toList());
        }

        boolean canHold(FactSet set) {
            for (int bits = 0; bits < 1 << variables; bits++) {
                int values = bits;
                if (set.numbers().stream().allMatch(c -> isTrue(all.get(c), values))) {
                    return true;
                }
            }
            return false;
        }

        private static boolean isTrue(List<Integer> clause, int values) {
            for (int literal : clause) {
                boolean on = ((values >> (Math.abs(literal) - 1)) & 1) == 1;
                if (on == literal > 0) {
                    return true;
                }
            }
            return false;
        }
    }

    /**
     * Examples in the style of Liffiton and Sakallah (2008), from memory; their minimal sets worked out by hand: a, not a, (not a or b),
     * not b; and a, (not a or b), not b, (not a or c), not c, not a.
     */
    static Stream<Arguments> examples() {
        return Stream.of(
                Arguments.of(
                        Clauses.of(2, new int[][] {{1}, {-1}, {-1, 2}, {-2}}),
                        List.of(FactSet.of(0, 1), FactSet.of(0, 2, 3)),
                        List.of(FactSet.of(0), FactSet.of(1, 2), FactSet.of(1, 3))),
                Arguments.of(
                        Clauses.of(3, new int[][] {{1}, {-1, 2}, {-2}, {-1, 3}, {-3}, {-1}}),
                        List.of(FactSet.of(0, 5), FactSet.of(0, 1, 2), FactSet.of(0, 3, 4)),
                        List.of(
                                FactSet.of(0),
                                FactSet.of(1, 3, 5),
                                FactSet.of(1, 4, 5),
                                FactSet.of(2, 3, 5),
                                FactSet.of(2, 4, 5))));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void findsThePublishedSets(Clauses clauses, List<FactSet> conflicts, List<FactSet> corrections) {
        ConflictSearch.Found found = new ConflictSearch(clauses.all().size(), clauses::canHold, () -> false).run();

        assertThat(found.whole()).isTrue();
        assertThat(found.conflicts()).containsExactlyElementsOf(conflicts);
        assertThat(found.corrections()).containsExactlyElementsOf(corrections);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void eachIsTheHittingSetsOfTheOther(Clauses clauses, List<FactSet> conflicts, List<FactSet> corrections) {
        assertThat(clauses.all()).isNotEmpty();
        assertThat(HittingSets.all(corrections)).containsExactlyElementsOf(conflicts);
        assertThat(HittingSets.all(conflicts)).containsExactlyElementsOf(corrections);
    }

    @Test
    void agreesWithLookingAtEverySubset() {
        Random random = new Random(20261125);
        int withConflicts = 0;
        for (int run = 0; run < 300; run++) {
            Clauses clauses = random(random);
            int count = clauses.all().size();
            Predicate<FactSet> holds = clauses::canHold;
            List<FactSet> conflicts = new ArrayList<>();
            List<FactSet> corrections = new ArrayList<>();
            for (int bits = 0; bits < 1 << count; bits++) {
                FactSet set = ofBits(bits, count);
                if (!holds.test(set) && set.numbers().stream().allMatch(f -> holds.test(set.without(f)))) {
                    conflicts.add(set);
                }
                FactSet rest = FactSet.upTo(count).minus(set);
                if (holds.test(rest) && set.numbers().stream().noneMatch(f -> holds.test(rest.with(f)))) {
                    corrections.add(set);
                }
            }
            ConflictSearch.Found found = new ConflictSearch(count, holds, () -> false).run();
            assertThat(found.conflicts()).as("run " + run).containsExactlyInAnyOrderElementsOf(conflicts);
            assertThat(found.corrections()).as("run " + run).containsExactlyInAnyOrderElementsOf(corrections);
            withConflicts += conflicts.isEmpty() ? 0 : 1;
        }
        assertThat(withConflicts).isGreaterThan(150);
    }

    private static Clauses random(Random random) {
        int[][] clauses = new int[3 + random.nextInt(6)][];
        for (int i = 0; i < clauses.length; i++) {
            clauses[i] = new int[1 + random.nextInt(2)];
            for (int k = 0; k < clauses[i].length; k++) {
                clauses[i][k] = (1 + random.nextInt(3)) * (random.nextBoolean() ? 1 : -1);
            }
        }
        return Clauses.of(3, clauses);
    }

    private static FactSet ofBits(int bits, int count) {
        FactSet out = FactSet.NONE;
        for (int i = 0; i < count; i++) {
            out = ((bits >> i) & 1) == 1 ? out.with(i) : out;
        }
        return out;
    }

    @Test
    void whatWasStoppedSaysSo() {
        Clauses clauses = Clauses.of(2, new int[][] {{1}, {-1}, {-1, 2}, {-2}});
        int[] asked = {0};

        ConflictSearch.Found found = new ConflictSearch(4, clauses::canHold, () -> ++asked[0] > 6).run();

        assertThat(found.whole()).isFalse();
        assertThat(found.conflicts()).allMatch(c -> !clauses.canHold(c));
    }

    @Test
    void hittingSetsBeyondTheMostAreSaidToExist() {
        List<FactSet> pairs = List.of(FactSet.of(0, 1), FactSet.of(2, 3), FactSet.of(70, 130));

        assertThat(HittingSets.upTo(pairs, 7).whole()).isFalse();
        assertThat(HittingSets.upTo(pairs, 7).sets()).hasSize(7);
        assertThat(HittingSets.upTo(pairs, 8).whole()).isTrue();
        assertThat(HittingSets.all(pairs)).hasSize(8).contains(FactSet.of(1, 2, 130));
        assertThat(HittingSets.all(List.of())).containsExactly(FactSet.NONE);
        assertThat(HittingSets.all(List.of(FactSet.NONE))).isEmpty();
    }

    @Test
    void keepsTheSetsThatNoOtherIsPartOf() {
        Smallest<String> kept = new Smallest<>();
        kept.offer(FactSet.of(1, 2), "first");
        kept.offer(FactSet.of(1, 2), "again");
        kept.offer(FactSet.of(3), "three");
        kept.offer(FactSet.of(3, 4), "more");
        kept.offer(FactSet.of(2), "two");

        assertThat(kept.all())
                .containsExactly(
                        new Smallest.Kept<>(FactSet.of(2), "two"), new Smallest.Kept<>(FactSet.of(3), "three"));
    }
}

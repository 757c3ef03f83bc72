package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.Loader;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.cpsat.CpSatCount;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo's short tower with a reduced brief: a second solver finds the same layouts, mod set by mod set. */
class DemoChassisCpSatTest {

    @BeforeAll
    static void loadsItsLibrary() {
        String trouble = "";
        try {
            Loader.loadNativeLibraries();
        } catch (RuntimeException | LinkageError e) {
            trouble = e.toString();
        }
        assumeTrue(trouble.isEmpty(), "OR-Tools' native library does not load here: " + trouble);
    }

    /** Every so many of the valid sets: prime, so that the choice runs through all combinations of the mods. */
    private static final int STEP = 61;

    @Test
    void findsTheSameLayoutsWithEachModSet() {
        OracleCase question = DemoQuestion.reduced();
        List<SortedSet<String>> valid = BruteForce.validSets(question);
        int layouts = 0;
        int without = 0;
        for (int i = 0; i < valid.size(); i += STEP) {
            SortedSet<String> set = valid.get(i);
            SortedSet<String> found = production(question, set);
            assertThat(found)
                    .as("layouts with %s", set)
                    .isEqualTo(CpSatCount.layouts(question, set, Collections.emptySortedSet()));
            layouts += found.size();
            without += found.isEmpty() ? 1 : 0;
        }
        assertThat(layouts).as("layouts over the sets").isGreaterThan(60);
        assertThat(without).as("sets with which nothing fits").isPositive();
    }

    private static SortedSet<String> production(OracleCase question, SortedSet<String> mods) {
        List<String> others = question.chassis().mods().stream()
                .map(Mod::id)
                .filter(id -> !mods.contains(id))
                .toList();
        FitWish exactly = new FitWish(List.copyOf(mods), others, OptionalInt.empty(), OptionalLong.empty());
        FitResult result = new FitSearch(
                        new FitCase(question.catalog(), question.chassis(), question.brief()), exactly, () -> false)
                .run();
        assertThat(result.isComplete()).isTrue();
        assertThat(result.modSets()).as("mod sets looked at").isEqualTo(1);
        return result.fits().stream().map(f -> f.layout().text()).collect(Collectors.toCollection(TreeSet::new));
    }
}

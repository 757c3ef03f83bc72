package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.LongStream;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.ModSet;
import loopwright.fit.WitnessFinder;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.Fault;
import loopwright.oracle.cases.CaseGenerator.Mode;
import loopwright.oracle.cases.WhyCases;
import loopwright.oracle.choco.ChocoAlone;
import org.junit.jupiter.api.Test;

/** The production search against the oracles that share no code with it. */
class ProductionAgreementTest {

    /** Tiny cases against Choco alone. */
    private static final int TINY_SEEDS = 420;

    /** Cases with slot ranges of real millimetres against Choco alone. */
    private static final int SMALL_SEEDS = 80;

    /** Tiny cases with more parts against brute force. */
    private static final int MORE_PARTS_SEEDS = 60;

    static FitAnswer production(OracleCase question) {
        return told(question, new FitSearch(fitCase(question), FitWish.ALL, () -> false));
    }

    private static FitCase fitCase(OracleCase question) {
        return new FitCase(question.catalog(), question.chassis(), question.brief());
    }

    private static FitAnswer told(OracleCase question, FitSearch search) {
        FitResult result = search.run();
        SortedMap<String, SortedSet<SortedSet<String>>> needed = new TreeMap<>();
        for (FoundLayout found : result.fits()) {
            SortedSet<SortedSet<String>> sets = ModSetOrder.sets();
            for (ModSet set : found.needed()) {
                sets.add(new TreeSet<>(set.ids(question.chassis())));
            }
            needed.put(found.layout().text(), sets);
        }
        SortedSet<String> unknown = new TreeSet<>();
        result.unknown().forEach(u -> unknown.add(u.layout().text()));
        return new FitAnswer(needed, unknown);
    }

    /** As production, and with a witness made for every layout and needed set: each is re-checked on the way. */
    private static FitAnswer withWitnesses(OracleCase question) {
        FitSearch search = new FitSearch(fitCase(question), FitWish.ALL, () -> false);
        WitnessFinder finder = new WitnessFinder(search);
        for (FoundLayout found : search.run().fits()) {
            found.needed().forEach(set -> finder.witness(found.layout(), set));
        }
        return production(question);
    }

    @Test
    void agreesWithChocoAloneOnTinyCases() {
        Function<OracleCase, FitAnswer> production = ProductionAgreementTest::production;
        OracleAgreementTest.assertAgree(LongStream.range(0, TINY_SEEDS), Mode.TINY, new ChocoAlone(), production);
    }

    /** Seeds in which an unknown end, counted as 0, lies beyond the known one of its span. */
    @Test
    void aSpanWithAnUnknownEndReachesBetweenTheTwo() {
        Function<OracleCase, FitAnswer> production = ProductionAgreementTest::production;
        OracleAgreementTest.assertAgree(LongStream.of(1822, 2089), Mode.TINY, new ChocoAlone(), production);
    }

    @Test
    void agreesWithBruteForceOnTinyCasesAndItsWitnessesStand() {
        OracleAgreementTest.assertAgree(
                Seeds.tiny().limit(60), Mode.TINY, new BruteForce(Fault.NONE), ProductionAgreementTest::withWitnesses);
    }

    @Test
    void agreesWithBruteForceAtBestCaseAndAllThatFitsIsAmongIt() {
        OracleAgreementTest.assertAgree(
                Seeds.tiny().limit(60), Mode.TINY, BruteForce.atBestCase(), ProductionAgreementTest::atBestCase);
    }

    private static FitAnswer atBestCase(OracleCase question) {
        FitSearch search = FitSearch.atBestCase(fitCase(question), FitWish.ALL, () -> false);
        FitAnswer answer = told(question, search);
        assertThat(answer.needed().keySet())
                .as("seed %s", question.seed())
                .containsAll(production(question).needed().keySet());
        return answer;
    }

    @Test
    void agreesWithChocoAloneOnCasesOfRealMillimetres() {
        Function<OracleCase, FitAnswer> production = ProductionAgreementTest::production;
        OracleAgreementTest.assertAgree(LongStream.range(0, SMALL_SEEDS), Mode.SMALL, new ChocoAlone(), production);
    }

    /** Drives that are alike in all but their plugs, places for several kinds of things, parts that do not go together. */
    @Test
    void agreesWithBruteForceOnCasesWithMoreParts() {
        LongStream.range(0, MORE_PARTS_SEEDS).forEach(seed -> {
            OracleCase question = WhyCases.generate(seed).question();
            FitAnswer answer = production(question);
            FitAnswer expected = new BruteForce(Fault.NONE).apply(question);
            assertThat(answer.needed()).as("seed %s: needed", seed).isEqualTo(expected.needed());
            assertThat(answer.unknown()).as("seed %s: unknown", seed).isEqualTo(expected.unknown());
        });
    }
}

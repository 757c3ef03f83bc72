package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PrimitiveIterator;
import java.util.function.Function;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.Fault;
import loopwright.oracle.cases.CaseGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each planted mistake gives another answer than the truth on one of the default seeds. */
class FaultyOraclesTest {

    /** What the truth says, seed by seed: each mistake asks again. */
    private static final Map<Long, FitAnswer> TRUTH = new HashMap<>();

    private static FitAnswer truth(OracleCase question) {
        return TRUTH.computeIfAbsent(question.seed(), s -> new BruteForce(Fault.NONE).apply(question));
    }

    @ParameterizedTest
    @EnumSource(value = Fault.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void aMistakeIsCaught(Fault fault) {
        Function<OracleCase, FitAnswer> faulty = FaultyOracles.all().get(fault);
        List<Long> tried = new ArrayList<>();
        boolean caught = false;
        PrimitiveIterator.OfLong seeds = Seeds.tiny().iterator();
        while (seeds.hasNext() && !caught) {
            OracleCase question = CaseGenerator.generate(seeds.nextLong(), CaseGenerator.Mode.TINY);
            tried.add(question.seed());
            caught = !truth(question).equals(faulty.apply(question));
        }
        assertThat(caught).as("%s on seeds %s", fault, tried).isTrue();
    }
}

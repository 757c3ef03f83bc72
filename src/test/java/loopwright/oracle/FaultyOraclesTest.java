package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.PrimitiveIterator;
import java.util.function.Function;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.Fault;
import loopwright.oracle.cases.CaseGenerator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each planted mistake gives another answer than the truth on one of the default seeds. */
class FaultyOraclesTest {

    @ParameterizedTest
    @EnumSource(value = Fault.class, mode = EnumSource.Mode.EXCLUDE, names = "NONE")
    void aMistakeIsCaught(Fault fault) {
        Function<OracleCase, FitAnswer> truth = new BruteForce(Fault.NONE);
        Function<OracleCase, FitAnswer> faulty = FaultyOracles.all().get(fault);
        List<Long> tried = new ArrayList<>();
        boolean caught = false;
        PrimitiveIterator.OfLong seeds = Seeds.tiny().iterator();
        while (seeds.hasNext() && !caught) {
            OracleCase question = CaseGenerator.generate(seeds.nextLong(), CaseGenerator.Mode.TINY);
            tried.add(question.seed());
            caught = !truth.apply(question).equals(faulty.apply(question));
        }
        assertThat(caught).as("%s on seeds %s", fault, tried).isTrue();
    }
}

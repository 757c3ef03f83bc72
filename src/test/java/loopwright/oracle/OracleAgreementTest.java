package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import java.util.stream.LongStream;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.brute.Fault;
import loopwright.oracle.cases.CaseGenerator;
import loopwright.oracle.cases.CaseGenerator.Mode;
import loopwright.oracle.choco.ChocoAlone;
import org.junit.jupiter.api.Test;

/** Engines that share no code give the same answer. */
class OracleAgreementTest {

    /** Asserts that two engines answer alike for each seed; for any engine that can answer a case. */
    static void assertAgree(
            LongStream seeds, Mode mode, Function<OracleCase, FitAnswer> one, Function<OracleCase, FitAnswer> other) {
        seeds.forEach(seed -> {
            OracleCase question = CaseGenerator.generate(seed, mode);
            FitAnswer expected = one.apply(question);
            FitAnswer answer = other.apply(question);
            assertThat(answer.needed()).as("%s seed %s: needed", mode, seed).isEqualTo(expected.needed());
            assertThat(answer.unknown()).as("%s seed %s: unknown", mode, seed).isEqualTo(expected.unknown());
        });
    }

    @Test
    void bruteForceAndChocoAgreeOnTinyCases() {
        assertAgree(Seeds.tiny(), Mode.TINY, new BruteForce(Fault.NONE), new ChocoAlone());
    }
}

package loopwright.oracle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.ortools.Loader;
import java.util.stream.LongStream;
import loopwright.oracle.brute.BruteForce;
import loopwright.oracle.cases.CaseGenerator;
import loopwright.oracle.cases.CaseGenerator.Mode;
import loopwright.oracle.choco.ChocoAlone;
import loopwright.oracle.cpsat.CpSatCount;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A third engine counts the same layouts. Skipped where its native library does not load. */
class CpSatCountTest {

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

    @Test
    void countsTheSameLayoutsOnTinyCases() {
        agree(Mode.TINY, 8);
    }

    @Test
    void countsTheSameLayoutsOnSmallCases() {
        agree(Mode.SMALL, 4);
    }

    private static void agree(Mode mode, int seeds) {
        LongStream.range(0, seeds).forEach(seed -> {
            OracleCase question = CaseGenerator.generate(seed, mode);
            assertThat(CpSatCount.layouts(question, BruteForce.validSets(question)))
                    .as("%s seed %s", mode, seed)
                    .isEqualTo(new ChocoAlone().apply(question).needed().keySet());
        });
    }
}

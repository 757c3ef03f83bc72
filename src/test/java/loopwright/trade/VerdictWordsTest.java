package loopwright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.fit.Gap;
import loopwright.geometry.Sum;
import loopwright.geometry.Verdict;
import loopwright.tolerance.AxisMargin;
import loopwright.tolerance.FitProbability;
import loopwright.tolerance.PairMargin;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source: tight below 2 mm, close below 5 (at cables and tubes below 10), clear from there. */
class VerdictWordsTest {

    @ParameterizedTest(name = "margin {0} hundredths is {1}")
    @CsvSource({
        "-1, CLASH",
        "0, TIGHT",
        "199, TIGHT",
        "200, CLOSE",
        "499, CLOSE",
        "500, CLEAR",
        "-100000, CLASH",
        "100000, CLEAR"
    })
    void betweenStillThings(int marginHmm, Verdict verdict) {
        assertThat(Verdict.of(marginHmm, 0, false)).isEqualTo(verdict);
        assertThat(gap(marginHmm).verdict()).isEqualTo(verdict);
    }

    private static Gap gap(int marginHmm) {
        AxisMargin exact = AxisMargin.between(marginHmm, Sum.ZERO, Sum.ZERO, "pair");
        PairMargin margin = new PairMargin(exact, List.of(), new FitProbability());
        return new Gap("one", "other", marginHmm + 100, 100, margin, false);
    }

    @ParameterizedTest(name = "margin {0} hundredths at a cable is {1}")
    @CsvSource({"-1, CLASH", "0, TIGHT", "199, TIGHT", "200, CLOSE", "500, CLOSE", "999, CLOSE", "1000, CLEAR"})
    void atACable(int marginHmm, Verdict verdict) {
        assertThat(Verdict.of(marginHmm, 0, true)).isEqualTo(verdict);
    }

    @ParameterizedTest(name = "margin {0}, worst case {1}: {2}")
    @CsvSource({"800, -1, TIGHT", "800, 0, CLEAR", "300, -1, TIGHT", "300, 0, CLOSE", "-1, -500, CLASH"})
    void aWorstCaseBelowNothingIsTight(int marginHmm, int worstCaseHmm, Verdict verdict) {
        assertThat(Verdict.of(marginHmm, worstCaseHmm, false)).isEqualTo(verdict);
    }
}

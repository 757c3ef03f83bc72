package loopwright.tolerance;

import static loopwright.tolerance.Stacks.normal;
import static loopwright.tolerance.Stacks.rectangular;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worst case and root sum square of a margin, hundredths of a millimetre. */
class AxisMarginTest {

    private static AxisMargin stack(int... plusMinusHmm) {
        Sum sum = Sum.ZERO;
        for (int i = 0; i < plusMinusHmm.length; i++) {
            sum = sum.plus("d" + i, normal(plusMinusHmm[i]));
        }
        return AxisMargin.between(800, sum, Sum.ZERO, "pair");
    }

    /** A stack of ±0.5, 0.3, 0.2, 0.2, 0.1: worst case 1.3, root sum square 0.655744 (plain arithmetic). */
    @Test
    void aStackOfFive() {
        assertThat(stack(50, 30, 20, 20, 10).worstCaseHmm()).isEqualTo(130);
        assertThat(stack(50, 30, 20, 20, 10).rssHmm()).isEqualTo(66);
        assertThat(stack(5000, 3000, 2000, 2000, 1000).rssHmm()).isEqualTo(6557);
    }

    /**
     * JCGM 100:2008 (GUM) example H.1, contributions in hundredths of a nanometre: 5.8, 3.9 and 6.7 make 9.7; with 25, 2.9
     * and 16.6 that makes 31.67, in the book 32.
     */
    @Test
    void theEndGauge() {
        assertThat(stack(580, 390, 670).rssHmm()).isEqualTo(968);
        assertThat(stack(2500, 970, 290, 1660).rssHmm()).isEqualTo(3167);
    }

    /**
     * The documentation of the GUM tree calculator (GTC): 0.1 V ± 0.001 over 15 mA ± 0.5 is 6.67 ± 0.232006 ohms; the
     * contributions are 0.001/0.015 and 0.1/0.015²·0.0005, here in ten thousandths of an ohm.
     */
    @Test
    void aResistance() {
        assertThat(stack(667, 2222).rssHmm()).isEqualTo(2320);
    }

    /** Worst case is never below root sum square, and that never below the largest single ±. */
    @Test
    void worstCaseThenRootSumSquareThenTheLargest() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            int[] all = random.ints(1 + random.nextInt(8), 0, 200).toArray();
            int largest = java.util.Arrays.stream(all).max().orElseThrow();
            AxisMargin margin = stack(all);
            assertThat(margin.worstCaseHmm()).as("draw %d", i).isGreaterThanOrEqualTo(margin.rssHmm());
            assertThat(margin.rssHmm()).as("draw %d", i).isGreaterThanOrEqualTo(largest);
        }
    }

    /** Common practice, no source: a clearance is never taken to be off by less than 0.5 mm. */
    @ParameterizedTest(name = "+-{0} and +-{1}: worst {2}, rss {3}")
    @CsvSource({"0, 0, 50, 50", "20, 20, 50, 50", "30, 30, 60, 50", "40, 40, 80, 57", "50, 0, 50, 50"})
    void neverBelowHalfAMillimetre(int a, int b, int worst, int rss) {
        assertThat(stack(a, b).worstCaseHmm()).isEqualTo(worst);
        assertThat(stack(a, b).rssHmm()).isEqualTo(rss);
    }

    /** What is missing is a deviation of its own: together they have the standard deviation of ±0.5, a quarter millimetre. */
    @Test
    void whatIsMissingMakesUpTheLeastSpread() {
        assertThat(stack(0).floorSigmaHmm()).isEqualTo(25);
        assertThat(stack(30).floorSigmaHmm()).isEqualTo(20);
        assertThat(stack(30).sigmaHmm()).isCloseTo(25, within(1e-12));
        assertThat(stack(60).floorSigmaHmm()).isZero();
        assertThat(stack(60).sigmaHmm()).isEqualTo(30);
    }

    /** Two things on one datum: the datum cancels, half a dimension counts half. */
    @Test
    void whatIsSharedCancels() {
        Sum upper = Sum.ZERO.plus("datum", normal(300)).minus("a", normal(100));
        Sum lower = Sum.ZERO.plus("datum", normal(300)).plusHalves(1, "b", normal(100));
        AxisMargin margin = AxisMargin.between(800, upper, lower, "pair");

        assertThat(margin.terms()).extracting(Sum.Term::name).containsExactly("a", "b");
        assertThat(margin.worstCaseHmm()).isEqualTo(150);
        assertThat(margin.rssHmm()).isEqualTo(112);
    }

    @Test
    void twoOfOneNameButOtherSizeDoNotCancel() {
        Dimension other = new Dimension(2000, 100, loopwright.quantity.Known.MEASURED);
        AxisMargin margin = AxisMargin.between(800, Sum.ZERO.plus("a", normal(100)), Sum.ZERO.plus("a", other), "pair");

        assertThat(margin.worstCaseHmm()).isEqualTo(200);
    }

    /** Even spreads count by their ± in both; what is not known is kept, to say so. */
    @Test
    void evenSpreadsAndUnknowns() {
        Sum even = Sum.ZERO.plus("a", rectangular(60)).plus("b", rectangular(80));

        assertThat(AxisMargin.between(0, even, Sum.ZERO, "pair").rssHmm()).isEqualTo(100);
        assertThat(AxisMargin.between(0, even, Sum.ZERO, "pair").isKnown()).isTrue();
        assertThat(AxisMargin.between(0, even.plus("c", Dimension.UNKNOWN), Sum.ZERO, "pair")
                        .isKnown())
                .isFalse();
    }
}

package loopwright.tolerance;

import static loopwright.tolerance.Stacks.any;
import static loopwright.tolerance.Stacks.chance;
import static loopwright.tolerance.Stacks.margin;
import static loopwright.tolerance.Stacks.normal;
import static loopwright.tolerance.Stacks.rectangular;
import static loopwright.tolerance.Stacks.single;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import loopwright.quantity.Dimension;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The chance that several margins are all kept, against closed forms and against plain sampling. */
class FitProbabilityTest {

    /** Standard error that is promised. */
    private static final double PROMISED = 1e-3;

    private static final NormalDistribution LIBRARY = new NormalDistribution();

    /** One margin: the normal curve at margin over standard deviation, which is half the ±. */
    @ParameterizedTest(name = "{0} hundredths with +-{1}")
    @CsvSource({"0, 100", "50, 100", "100, 100", "150, 100", "-50, 100", "30, 60", "299, 100"})
    void oneMargin(int nominalHmm, int plusMinusHmm) {
        assertThat(chance(List.of(any(single(nominalHmm, "a", normal(plusMinusHmm))))))
                .isCloseTo(LIBRARY.cumulativeProbability(2.0 * nominalHmm / plusMinusHmm), within(1e-12));
    }

    /** Margins that share nothing: the product. */
    @Test
    void independentMarginsMultiply() {
        List<BoxMargin> boxes = List.of(
                any(single(50, "a", normal(100))),
                any(single(20, "b", normal(80))),
                any(single(90, "c", rectangular(100))));

        double product = LIBRARY.cumulativeProbability(1) * LIBRARY.cumulativeProbability(0.5) * (190 / 200.0);
        assertThat(chance(boxes)).isCloseTo(product, within(1e-12));
    }

    /** Two ways to be apart that share nothing: one less the product of both failing. */
    @Test
    void independentWaysFailTogether() {
        double none = (1 - LIBRARY.cumulativeProbability(1)) * (1 - LIBRARY.cumulativeProbability(0.5));

        assertThat(chance(List.of(any(single(50, "a", normal(100)), single(20, "b", normal(80))))))
                .isCloseTo(1 - none, within(1e-12));
    }

    /** Two margins of the same dimensions alone are one: the smaller decides. */
    @Test
    void marginsThatShareEverythingAreOne() {
        List<BoxMargin> boxes = List.of(any(single(80, "a", normal(100))), any(single(50, "a", normal(100))));

        assertThat(chance(boxes)).isCloseTo(LIBRARY.cumulativeProbability(1), within(1e-12));
    }

    /** What is between two walls that may both come nearer: not below one and not above the other. */
    @Test
    void marginsThatGoAgainstEachOther() {
        Map<String, Dimension> all = Map.of("a", normal(100));
        List<BoxMargin> boxes =
                List.of(any(margin(50, "f", Map.of("a", 2), all)), any(margin(30, "g", Map.of("a", -2), all)));

        double both = LIBRARY.cumulativeProbability(1) - LIBRARY.cumulativeProbability(-0.6);
        assertThat(chance(boxes)).isCloseTo(both, within(1e-12));
    }

    /**
     * Two margins of 0 whose deviations correlate by ρ: 1/4 + asin(ρ)/2π. W. F. Sheppard, Phil. Trans. R. Soc. A 192 (1899)
     * 101–167 (formula from memory).
     */
    @ParameterizedTest(name = "own +-{0}, shared +-{1}")
    @CsvSource({"100, 50", "100, 100", "60, 140", "200, 30"})
    void twoThatCorrelate(int own, int shared) {
        double rho = (double) shared * shared / (own * own + shared * shared);

        assertThat(chance(correlated(2, own, shared)))
                .isCloseTo(0.25 + StrictMath.asin(rho) / (2 * Math.PI), within(2 * PROMISED));
    }

    /** Three of them, each pair by the same ρ: 1/8 + 3·asin(ρ)/4π (the same source). */
    @ParameterizedTest(name = "own +-{0}, shared +-{1}")
    @CsvSource({"100, 50", "100, 100", "60, 140", "200, 30"})
    void threeThatCorrelate(int own, int shared) {
        double rho = (double) shared * shared / (own * own + shared * shared);

        assertThat(chance(correlated(3, own, shared)))
                .isCloseTo(0.125 + 3 * StrictMath.asin(rho) / (4 * Math.PI), within(2 * PROMISED));
    }

    /** n margins of 0 that correlate by a half each: 1 in n + 1, since each of n + 1 equal deviations is as often the least. */
    @ParameterizedTest(name = "{0} of them")
    @ValueSource(ints = {2, 3, 5, 8, 12})
    void manyThatCorrelateByAHalf(int count) {
        assertThat(chance(correlated(count, 100, 100))).isCloseTo(1.0 / (count + 1), within(2 * PROMISED));
    }

    private static List<BoxMargin> correlated(int count, int own, int shared) {
        List<BoxMargin> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boxes.add(any(margin(
                    0,
                    "f" + i,
                    Map.of("own" + i, 2, "shared", 2),
                    Map.of("own" + i, normal(own), "shared", normal(shared)))));
        }
        return boxes;
    }

    /** Two even spreads of ±1 mm make a triangle from −2 to 2 mm: below −1 mm lies 1/8. */
    @ParameterizedTest(name = "margin {0}: {1}")
    @CsvSource({"100, 0.875", "0, 0.5", "-100, 0.125", "150, 0.96875", "200, 1", "-200, 0"})
    void twoEvenSpreadsMakeATriangle(int nominalHmm, double share) {
        Map<String, Dimension> all = Map.of("a", rectangular(100), "b", rectangular(100));

        assertThat(chance(List.of(any(margin(nominalHmm, "f", Map.of("a", 2, "b", -2), all)))))
                .isCloseTo(share, within(1e-9));
    }

    /** Three make pieces of parabolas: of sums of three shares of 0 to 1, 1/6 lie below 1. */
    @Test
    void threeEvenSpreads() {
        Map<String, Dimension> all = Map.of("a", rectangular(100), "b", rectangular(100), "c", rectangular(100));

        assertThat(chance(List.of(any(margin(100, "f", Map.of("a", 2, "b", 2, "c", 2), all)))))
                .isCloseTo(5 / 6.0, within(1e-9));
    }

    /** Both coordinates of a point evenly spread over a square: above the one and left of the other diagonal lies a quarter. */
    @Test
    void evenSpreadsThatSeveralMarginsShare() {
        Map<String, Dimension> all = Map.of("a", rectangular(100), "b", rectangular(100));
        List<BoxMargin> boxes = List.of(
                any(margin(0, "f", Map.of("a", 2, "b", 2), all)), any(margin(0, "g", Map.of("a", -2, "b", 2), all)));

        assertThat(chance(boxes)).isCloseTo(0.25, within(2 * PROMISED));
        List<BoxMargin> either =
                List.of(any(margin(0, "f", Map.of("a", 2, "b", 2), all), margin(0, "g", Map.of("a", -2, "b", 2), all)));
        assertThat(chance(either)).isCloseTo(0.75, within(2 * PROMISED));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** Sixty drawn stacks against plain sampling: within four standard errors of both together. */
    @ParameterizedTest(name = "stack {0}")
    @MethodSource("seeds")
    void plainSamplingAgrees(long seed) {
        List<BoxMargin> boxes = Stacks.drawn(seed);
        int draws = 400_000;

        double sampled = Stacks.sampled(boxes, draws, 1000 + seed);
        double error = Math.sqrt(sampled * (1 - sampled) / draws + PROMISED * PROMISED / 4);
        assertThat(chance(boxes)).as("stack %d", seed).isCloseTo(sampled, within(4 * error));
    }

    /** Neither the order in which margins come nor what was asked before is felt. */
    @Test
    void theSameWhateverTheOrder() {
        for (long seed = 1; seed <= 20; seed++) {
            List<BoxMargin> boxes = new ArrayList<>(Stacks.drawn(seed));
            double straight = chance(boxes);
            FitProbability used = new FitProbability();
            for (long before = 40; before > 30; before--) {
                used.ofAll(Stacks.drawn(before));
            }
            Collections.reverse(boxes);
            assertThat(used.ofAll(boxes).orElseThrow()).as("stack %d", seed).isEqualTo(straight);
        }
    }

    @Test
    void theSameInAnyThreadAndLocale() {
        List<Double> straight = LongStream.rangeClosed(1, 12)
                .mapToObj(s -> chance(Stacks.drawn(s)))
                .toList();
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag("ar-EG"));
        try {
            List<Double> again = IntStream.rangeClosed(1, 12)
                    .parallel()
                    .mapToObj(s -> chance(Stacks.drawn(s)))
                    .toList();
            assertThat(again).isEqualTo(straight);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void whatIsNotKnownHasNoChance() {
        List<BoxMargin> boxes = List.of(any(single(50, "a", normal(100))), any(single(500, "b", Dimension.UNKNOWN)));

        assertThat(new FitProbability().ofAll(boxes)).isEmpty();
    }

    @Test
    void nothingToMeetIsSure() {
        assertThat(chance(List.of())).isEqualTo(1);
        assertThat(chance(List.of(any(single(5000, "a", normal(100)))))).isEqualTo(1);
        assertThat(chance(List.of(any(single(-5000, "a", normal(100)))))).isZero();
    }
}

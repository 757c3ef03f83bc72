package loopwright.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sums of normal and even spreads in closed form: their standard deviations are published, their shapes are known. */
class SingleMarginTest {

    /** Standard deviation as the distribution itself has it: the root of the integral of 4x times what lies beyond x. */
    private static double standardDeviation(double sigma, List<Double> halfWidths) {
        double end = 9 * sigma + halfWidths.stream().mapToDouble(a -> a).sum();
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double x = (i + 0.5) * end / steps;
            sum += 4 * x * (1 - SingleMargin.probability(x, sigma, halfWidths));
        }
        return Math.sqrt(sum * end / steps);
    }

    /** JCGM 100:2008 (GUM) 4.3.7: an even spread of ±a has a standard uncertainty of a/√3. */
    @Test
    void anEvenSpread() {
        assertThat(standardDeviation(0, List.of(1.0))).isCloseTo(0.577350, within(1e-6));
    }

    /** GUM 4.3.9: a triangle of ±a, which two even spreads of ±a/2 make, has a/√6. */
    @Test
    void aTriangle() {
        assertThat(standardDeviation(0, List.of(0.5, 0.5))).isCloseTo(0.408248, within(1e-6));
    }

    /**
     * GUM example H.1, an end gauge, nm: normal inputs of 25 and 9.68 (from 5.8, 3.9 and 6.7), even spreads of
     * 50 000 623·0.1·1e-6 and of 50 000 623·11.5e-6·0.05, which contribute 2.9 and 16.6. Together 31.67, in the book 32.
     */
    @Test
    void theEndGauge() {
        double normal = Math.sqrt(25 * 25 + 5.8 * 5.8 + 3.9 * 3.9 + 6.7 * 6.7);
        double expansion = 50_000_623 * 0.1 * 1e-6;
        double temperature = 50_000_623 * 11.5e-6 * 0.05;

        assertThat(standardDeviation(0, List.of(expansion))).isCloseTo(2.9, within(0.05));
        assertThat(standardDeviation(0, List.of(temperature))).isCloseTo(16.6, within(0.05));
        assertThat(standardDeviation(normal, List.of(expansion, temperature))).isCloseTo(31.67, within(0.01));
    }

    /** Sums of many even spreads: the exact share of n of them, each ±1/2, below half a step past the middle. */
    @Test
    void fourEvenSpreads() {
        // Four shares of 0 to 1: 23/24 of the sums lie below 3 (the volume of a corner of the cube is 1/24).
        assertThat(SingleMargin.probability(1, 0, List.of(0.5, 0.5, 0.5, 0.5))).isCloseTo(23 / 24.0, within(1e-12));
    }

    /** Even and normal: the mean of the normal curve over the even spread, by plain quadrature. */
    @ParameterizedTest(name = "limit {0}")
    @ValueSource(doubles = {-120, -30, 0, 10, 75, 160})
    void evenAndNormal(double limit) {
        int steps = 20_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double off = -80 + 160 * (i + 0.5) / steps;
            sum += NormalCurve.below((limit + off) / 40);
        }
        assertThat(SingleMargin.probability(limit, 40, List.of(80.0))).isCloseTo(sum / steps, within(1e-8));
    }

    /** Twelve even spreads of ±1/2 are the classic stand-in for a normal of 1; sizes differ so that none is left out. */
    @Test
    void manyEvenSpreadsAreNearlyNormal() {
        List<Double> many = Collections.nCopies(12, 0.5);

        for (double z : new double[] {-2, -1, 0, 1, 2}) {
            assertThat(SingleMargin.probability(z, 0, many)).isCloseTo(NormalCurve.below(z), within(3e-3));
        }
    }

    /** A spread too small to be seen changes nothing, whether it is taken as even or as normal. */
    @Test
    void aSmallSpreadIsNotFelt() {
        double with = SingleMargin.probability(40, 100, List.of(9.0));

        assertThat(with).isCloseTo(NormalCurve.below(40 / Math.sqrt(10_000 + 27)), within(1e-6));
        assertThat(SingleMargin.probability(-400, 100, List.of(50.0))).isBetween(0.0, 1e-3);
        assertThat(SingleMargin.probability(900, 100, List.of(50.0, 60.0, 70.0)))
                .isCloseTo(1, within(1e-12));
    }
}

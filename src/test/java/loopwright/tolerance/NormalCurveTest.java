package loopwright.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published values: Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1; ten decimals by the error function. */
class NormalCurveTest {

    @ParameterizedTest(name = "below {0}: {1}")
    @CsvSource({
        "-3, 0.0013498980",
        "-2, 0.0227501319",
        "-1, 0.1586552539",
        "0, 0.5",
        "0.5, 0.6914624613",
        "1, 0.8413447461",
        "2, 0.9772498681",
        "3, 0.9986501020"
    })
    void whatLiesBelow(double z, double share) {
        assertThat(NormalCurve.below(z)).isCloseTo(share, within(5.1e-11));
    }

    @ParameterizedTest(name = "{0} lies below {1}")
    @CsvSource({
        "0.75, 0.6744897502",
        "0.90, 1.2815515655",
        "0.95, 1.6448536270",
        "0.975, 1.9599639845",
        "0.99, 2.3263478740",
        "0.995, 2.5758293035",
        "0.999, 3.0902323062"
    })
    void theValueWithSoMuchBelow(double share, double z) {
        assertThat(NormalCurve.at(share)).isCloseTo(z, within(5.1e-11));
        assertThat(NormalCurve.at(1 - share)).isCloseTo(-z, within(1e-9));
    }

    /** Another implementation: the library's, from its incomplete gamma function. */
    @Test
    void agreesWithTheLibraryEverywhere() {
        NormalDistribution library = new NormalDistribution();
        for (int i = -800; i <= 800; i++) {
            double z = i / 100.0;
            double share = library.cumulativeProbability(z);
            assertThat(NormalCurve.below(z)).as("below %s", z).isCloseTo(share, within(2e-15 + 1e-12 * share));
            assertThat(NormalCurve.density(z)).as("at %s", z).isCloseTo(library.density(z), within(1e-15));
            if (z < 0) {
                assertThat(NormalCurve.at(share)).as("inverse at %s", z).isCloseTo(z, within(1e-11));
            }
        }
    }

    @Test
    void endsAreNothingAndAll() {
        assertThat(NormalCurve.below(-60)).isZero();
        assertThat(NormalCurve.below(60)).isEqualTo(1);
        assertThat(NormalCurve.below(Double.NEGATIVE_INFINITY)).isZero();
        assertThat(NormalCurve.below(Double.POSITIVE_INFINITY)).isEqualTo(1);
    }
}

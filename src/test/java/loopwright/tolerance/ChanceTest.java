package loopwright.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words for probabilities, and the brief's confidence, at their borders. */
class ChanceTest {

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "1, sure",
        "0.99, sure",
        "0.98999, likely",
        "0.8, likely",
        "0.79999, toss-up",
        "0.4, toss-up",
        "0.39999, unlikely",
        "0, unlikely"
    })
    void words(double probability, String word) {
        assertThat(Chance.of(probability).word()).isEqualTo(word);
    }

    @Test
    void nothingButAProbability() {
        assertThatThrownBy(() -> Chance.of(1.01))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a probability is 0 to 1 but was 1.01");
        assertThatThrownBy(() -> Chance.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void threeDecimalsAreTold() {
        assertThat(Chance.told(0.98951)).isEqualTo(0.99);
        assertThat(Chance.told(0.98949)).isEqualTo(0.989);
    }

    /** What is told is compared: 89.95 % is told as 0.900, and is 90 %. */
    @ParameterizedTest(name = "{0} below {1} %: {2}")
    @CsvSource({"0.9, 90, false", "0.8995, 90, false", "0.8994, 90, true", "0.999, 99.9, false", "0.5, 1, false"})
    void belowTheBriefsConfidence(double probability, double percent, boolean below) {
        assertThat(Confidence.isBelow(OptionalDouble.of(probability), Optional.of(percent)))
                .isEqualTo(below);
    }

    @Test
    void withoutAWordNothingIsBelowAndUnknownIsAlways() {
        assertThat(Confidence.isBelow(OptionalDouble.of(0.01), Optional.empty()))
                .isFalse();
        assertThat(Confidence.isBelow(OptionalDouble.empty(), Optional.empty())).isFalse();
        assertThat(Confidence.isBelow(OptionalDouble.empty(), Optional.of(1.0))).isTrue();
    }
}

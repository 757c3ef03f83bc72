package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Falling functions whose roots are known. */
class BracketedRootTest {

    private record Function(DoubleUnaryOperator value, DoubleUnaryOperator slope) implements BracketedRoot.Falling {
        @Override
        public double at(double x) {
            return value.applyAsDouble(x);
        }

        @Override
        public double slopeAt(double x) {
            return slope.applyAsDouble(x);
        }
    }

    private static double root(
            DoubleUnaryOperator value, DoubleUnaryOperator slope, double low, double high, double guess) {
        return BracketedRoot.of("check", new Function(value, slope), low, high, guess);
    }

    /** Guesses inside, at the ends, outside and none at all. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01, 0.7, 1.9, 2, -5, 99, Double.NaN})
    void findsTheRootFromAnyGuess(double guess) {
        assertThat(root(x -> 2 - x * x, x -> -2 * x, 0, 2, guess)).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(root(x -> StrictMath.exp(-x) - 0.5, x -> -StrictMath.exp(-x), 0, 2, guess))
                .isCloseTo(StrictMath.log(2), within(1e-12));
        // flat at its root: 1 − x cubed, where Newton alone is slow
        assertThat(root(x -> (1 - x) * (1 - x) * (1 - x), x -> -3 * (1 - x) * (1 - x), 0, 2, guess))
                .isCloseTo(1, within(1e-4));
        // infinitely steep at its root: −∛(x − 1), where Newton alone runs away
        assertThat(root(
                        x -> -StrictMath.cbrt(x - 1),
                        x -> -1 / (3 * StrictMath.pow(StrictMath.cbrt(x - 1), 2)),
                        0,
                        2,
                        guess))
                .isCloseTo(1, within(1e-9));
    }

    /** A slope that lies by a factor, or is 0, costs steps but no accuracy. */
    @Test
    void aWrongSlopeDoesNotMatter() {
        assertThat(root(x -> 2 - x * x, x -> -1e-9, 0, 2, 1)).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(root(x -> 2 - x * x, x -> 0, 0, 2, 1)).isCloseTo(Math.sqrt(2), within(1e-12));
        assertThat(root(x -> 2 - x * x, x -> 3, 0, 2, 1)).isCloseTo(Math.sqrt(2), within(1e-12));
    }

    /** Where a square root starts, the slope is so steep that steps are tiny; that is no sign of a root. */
    @ParameterizedTest
    @ValueSource(doubles = {-1e-12, 0, 1e-15, 1e-9, 1e-6, -3})
    void aSteepStartIsNoRoot(double guess) {
        DoubleUnaryOperator value = x -> 3 - Math.copySign(Math.sqrt(Math.abs(x)), x);
        DoubleUnaryOperator slope = x -> -Math.min(1e6, 1 / (2 * Math.sqrt(Math.abs(x))));
        assertThat(root(value, slope, -10, 30, guess)).isCloseTo(9, within(1e-10));
        assertThat(root(x -> value.applyAsDouble(x) - 3 + 1e-3, slope, -10, 30, guess))
                .isCloseTo(1e-6, within(1e-12));
    }

    @Test
    void findsAStepDown() {
        assertThat(root(x -> x < 0.3 ? 1 : -1, x -> -1, 0, 1, 0.5)).isCloseTo(0.3, within(1e-12));
    }

    @Test
    void saysWhatDidNotConverge() {
        assertThatThrownBy(() -> root(x -> Double.NaN, x -> -1, 0, 1, 0.5))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("check did not converge in 120 steps: last between 0.0 and 1.0");
    }

    @Test
    void refusesEndsThatLeaveNoRoom() {
        assertThatThrownBy(() -> root(x -> 1 - x, x -> -1, 2, 1, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("check: no room between 2.0 and 1.0");
        assertThatThrownBy(() -> root(x -> 1 - x, x -> -1, 0, Double.NaN, 0)).hasMessageContaining("NaN");
    }
}

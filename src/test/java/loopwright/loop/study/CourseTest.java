package loopwright.loop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

final class CourseTest {

    /** From 20 °C towards 40 °C with 100 s. */
    private static final Course WARMING = new Course(20, 0.2, OptionalDouble.of(100));

    @Test
    void goesTheWholeWayButAnEthAfterOneTimeConstant() {
        assertThat(WARMING.endC().orElseThrow()).isCloseTo(40, within(1e-12));
        assertThat(WARMING.atC(0)).isEqualTo(20);
        assertThat(WARMING.atC(100)).isCloseTo(40 - 20 / Math.E, within(1e-12));
        assertThat(WARMING.afterTenMinutesC()).isCloseTo(40 - 20 * Math.exp(-6), within(1e-12));
    }

    @Test
    void isHalfwayAfterTheLogarithmOfTwo() {
        assertThat(WARMING.secondsUntil(30).orElseThrow()).isCloseTo(100 * Math.log(2), within(1e-9));
    }

    @Test
    void neverPassesItsEnd() {
        assertThat(WARMING.secondsUntil(40)).isEmpty();
        assertThat(WARMING.secondsUntil(41)).isEmpty();
    }

    @Test
    void isPastALimitBelowItsStart() {
        assertThat(WARMING.secondsUntil(19)).hasValue(0);
        Course cooling = new Course(40, -0.2, OptionalDouble.of(100));
        assertThat(cooling.secondsUntil(35)).hasValue(0);
        assertThat(cooling.secondsUntil(45)).isEmpty();
        assertThat(cooling.endC().orElseThrow()).isCloseTo(20, within(1e-12));
    }

    @Test
    void goesStraightOnWhereNothingTakesTheHeat() {
        Course straight = new Course(30, 0.1, OptionalDouble.empty());
        assertThat(straight.atC(60)).isCloseTo(36, within(1e-12));
        assertThat(straight.secondsUntil(50).orElseThrow()).isCloseTo(200, within(1e-9));
        assertThat(straight.endC()).isEmpty();
        assertThat(new Course(30, 0, OptionalDouble.empty()).secondsUntil(31)).isEmpty();
    }

    @Test
    void refusesTimesThatAreNone() {
        assertThatThrownBy(() -> WARMING.atC(-1)).hasMessageContaining("seconds must be at least 0 but was -1");
        assertThatThrownBy(() -> WARMING.atC(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Course(20, 1, OptionalDouble.of(0)))
                .hasMessageContaining("time constant must be above 0 s");
    }
}

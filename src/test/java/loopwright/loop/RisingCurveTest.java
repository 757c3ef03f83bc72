package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import loopwright.loop.FallingCurve.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RisingCurveTest {

    /** Validation: an independent implementation of Fritsch and Butland's slopes (SciPy's PchipInterpolator). */
    @ParameterizedTest
    @CsvSource({
        "0.5, 1.3",
        "1.5, 3.58235294117647",
        "2.5, 9.425763574660634",
        "3, 13.83144796380091",
        "3.7, 18.98836538461538",
        "4.5, 20.70192307692308"
    })
    void agreesWithAnotherImplementation(double x, double y) {
        RisingCurve curve = new RisingCurve(
                List.of(new Point(0, 1), new Point(1, 2), new Point(2, 6), new Point(4, 20), new Point(5, 21)));
        assertThat(curve.at(x)).isCloseTo(y, within(1e-12));
    }

    /** Property: over random rising points, a later point lies above an earlier one. */
    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63})
    void risesStrictly(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            List<Point> points = new ArrayList<>();
            double x = 0;
            double y = 0;
            for (int i = 0; i < 2 + random.nextInt(7); i++) {
                x += 0.1 + random.nextDouble();
                y += 0.01 + 10 * random.nextDouble() * random.nextDouble();
                points.add(new Point(x, y));
            }
            RisingCurve curve = new RisingCurve(points.size() > 1 ? points : List.of(new Point(0, 0), points.get(0)));
            double before = curve.first().y();
            for (int i = 1; i <= 300; i++) {
                double share = i / 300.0;
                double here = curve.at(
                        (1 - share) * curve.first().x() + share * curve.last().x());
                assertThat(here).as("seed %d round %d step %d", seed, round, i).isGreaterThan(before);
                before = here;
            }
        }
    }

    @Test
    void holdsItsEndsOutsideThePoints() {
        RisingCurve curve = new RisingCurve(List.of(new Point(1, 2), new Point(3, 8)));
        assertThat(curve.at(0)).isEqualTo(2);
        assertThat(curve.at(2)).isCloseTo(5, within(1e-12));
        assertThat(curve.at(9)).isEqualTo(8);
        assertThat(curve.last()).isEqualTo(new Point(3, 8));
    }

    @Test
    void refusesPointsThatDoNotRise() {
        assertThatThrownBy(() -> new RisingCurve(List.of(new Point(0, 1)))).hasMessageContaining("two points");
        assertThatThrownBy(() -> new RisingCurve(List.of(new Point(0, 1), new Point(1, 1))))
                .hasMessageContaining("x and y must rise, but point 2");
        assertThatThrownBy(() -> new RisingCurve(List.of(new Point(0, 1), new Point(0, 2))))
                .hasMessageContaining("point 2");
        assertThatThrownBy(() -> new RisingCurve(List.of(new Point(Double.NaN, 1), new Point(1, 2))))
                .hasMessageContaining("point 1");
    }
}

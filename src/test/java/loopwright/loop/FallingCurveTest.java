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

class FallingCurveTest {

    private static final FallingCurve CURVE = new FallingCurve(
            List.of(new Point(0, 10), new Point(1, 9.9), new Point(2, 9), new Point(3, 3), new Point(5, 0)));

    /** Validation: an independent implementation of Fritsch and Butland's slopes (SciPy's PchipInterpolator). */
    @ParameterizedTest
    @CsvSource({
        "0.25, 9.9928125",
        "0.5, 9.9725",
        "1, 9.9",
        "1.5, 9.623152173913043",
        "2.5, 6.125776397515527",
        "4, 0.8571428571428572",
        "4.5, 0.22767857142857145"
    })
    void agreesWithAnotherImplementation(double x, double y) {
        assertThat(CURVE.at(x)).isCloseTo(y, within(1e-12));
    }

    /** Property: over random falling points, no finer point lies above the one before it. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void neverRises(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            FallingCurve curve = new FallingCurve(fallingPoints(random));
            double before = curve.first().y();
            for (int i = 0; i <= 500; i++) {
                double y = curve.at(curve.last().x() * i / 500);
                assertThat(y).as("seed %d round %d step %d", seed, round, i).isLessThanOrEqualTo(before + 1e-12);
                before = y;
            }
            assertThat(before).isCloseTo(curve.last().y(), within(1e-9));
        }
    }

    @Test
    void twoPointsMakeAStraightLine() {
        FallingCurve line = new FallingCurve(List.of(new Point(0, 8), new Point(4, 0)));

        assertThat(line.at(1)).isCloseTo(6, within(1e-12));
        assertThat(line.at(3)).isCloseTo(2, within(1e-12));
    }

    @Test
    void holdsItsEndsOutsideThePoints() {
        assertThat(CURVE.at(-1)).isEqualTo(10);
        assertThat(CURVE.at(6)).isZero();
    }

    @Test
    void refusesPointsThatAreNoFallingCurve() {
        assertThatThrownBy(() -> new FallingCurve(List.of(new Point(0, 1)))).hasMessageContaining("two points");
        assertThatThrownBy(() -> new FallingCurve(List.of(new Point(0, 1), new Point(1, 2))))
                .hasMessageContaining("point 2");
        assertThatThrownBy(() -> new FallingCurve(List.of(new Point(0, 1), new Point(0, 0))))
                .hasMessageContaining("point 2");
        assertThatThrownBy(() -> new FallingCurve(List.of(new Point(0, Double.NaN), new Point(1, 0))))
                .hasMessageContaining("point 1");
    }

    private static List<Point> fallingPoints(Random random) {
        List<Point> points = new ArrayList<>();
        double x = 0;
        double y = 100;
        int count = 2 + random.nextInt(7);
        for (int i = 0; i < count; i++) {
            points.add(new Point(x, y));
            x += 0.01 + 30 * random.nextDouble() * random.nextDouble();
            y -= random.nextInt(4) == 0 ? 0 : 20 * random.nextDouble() * random.nextDouble();
        }
        return points;
    }
}

package loopwright.loop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Validation of water against the IAPWS formulations, and what must hold between their points. */
class WaterTest {

    private static final Water WATER = new Water();

    private static final List<DoubleUnaryOperator> PROPERTIES =
            List.of(WATER::densityKgPerM3, WATER::heatCapacityJPerKgK, WATER::viscosityPaS, WATER::conductivityWPerMK);

    /** IAPWS-95, R12-08, R15-11 at 0.1 MPa (see the file's header); tolerances are those the class claims. */
    @ParameterizedTest(name = "{0} °C")
    @CsvFileSource(resources = "/fluid/water-0.1-MPa.csv")
    void meetsThePublishedTable(
            double temperatureC,
            double densityKgPerM3,
            double heatCapacityJPerKgK,
            double viscosityMPaS,
            double conductivityWPerMK,
            double prandtl) {
        assertNear(WATER.densityKgPerM3(temperatureC), densityKgPerM3, 0.05);
        assertNear(WATER.heatCapacityJPerKgK(temperatureC), heatCapacityJPerKgK, 0.1);
        assertNear(1000 * WATER.viscosityPaS(temperatureC), viscosityMPaS, 0.5);
        assertNear(WATER.conductivityWPerMK(temperatureC), conductivityWPerMK, 0.5);
        assertNear(WATER.prandtl(temperatureC), prandtl, 1);
    }

    /** The fits' own claim, far inside the tolerances above: a changed digit shows. */
    @ParameterizedTest(name = "{0} °C")
    @CsvFileSource(resources = "/fluid/water-0.1-MPa.csv")
    void keepsTheFitsClaim(
            double temperatureC,
            double densityKgPerM3,
            double heatCapacityJPerKgK,
            double viscosityMPaS,
            double conductivityWPerMK,
            double prandtl) {
        assertNear(WATER.densityKgPerM3(temperatureC), densityKgPerM3, 0.0002);
        assertNear(WATER.heatCapacityJPerKgK(temperatureC), heatCapacityJPerKgK, 0.002);
        assertNear(1000 * WATER.viscosityPaS(temperatureC), viscosityMPaS, 0.006);
        assertNear(WATER.conductivityWPerMK(temperatureC), conductivityWPerMK, 0.021);
        assertNear(WATER.prandtl(temperatureC), prandtl, 0.03);
    }

    @Test
    void warmerIsLighterAndThinner() {
        for (int i = 1; i <= 600; i++) {
            double beforeC = 10 + (i - 1) / 10.0;
            double afterC = 10 + i / 10.0;
            assertThat(WATER.densityKgPerM3(afterC)).as("at %s °C", afterC).isLessThan(WATER.densityKgPerM3(beforeC));
            assertThat(WATER.viscosityPaS(afterC)).as("at %s °C", afterC).isLessThan(WATER.viscosityPaS(beforeC));
        }
    }

    /** No step and nothing negative on the way of a solver: 0.01 K changes nothing by more than 0.1 %. */
    @Test
    void isSmoothAndPositiveFromFreezingToBoiling() {
        for (DoubleUnaryOperator property : PROPERTIES) {
            for (int i = 1; i <= 10_000; i++) {
                double value = property.applyAsDouble(i / 100.0);
                assertThat(value).isPositive();
                assertNear(value, property.applyAsDouble((i - 1) / 100.0), 0.1);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, -40, -1e9, Double.NEGATIVE_INFINITY})
    void holdsTheLowerEnd(double temperatureC) {
        PROPERTIES.forEach(p -> assertThat(p.applyAsDouble(temperatureC)).isEqualTo(p.applyAsDouble(0)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {100.001, 140, 1e9, Double.POSITIVE_INFINITY})
    void holdsTheUpperEnd(double temperatureC) {
        PROPERTIES.forEach(p -> assertThat(p.applyAsDouble(temperatureC)).isEqualTo(p.applyAsDouble(100)));
    }

    @Test
    void refusesWhatIsNoTemperature() {
        PROPERTIES.forEach(p -> assertThatThrownBy(() -> p.applyAsDouble(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("temperature must be a number of °C but was NaN"));
    }

    @Test
    void freezesAtZero() {
        assertThat(WATER.freezingC()).isCloseTo(0, within(0.01));
    }

    private static void assertNear(double actual, double expected, double percent) {
        assertThat(actual).isCloseTo(expected, Percentage.withPercentage(percent));
    }
}

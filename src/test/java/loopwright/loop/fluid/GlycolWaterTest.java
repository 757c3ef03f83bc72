package loopwright.loop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What must hold for every mixture. */
class GlycolWaterTest {

    private static final long SEED = 4711;

    private static List<DoubleUnaryOperator> properties(Liquid liquid) {
        return List.of(
                liquid::densityKgPerM3, liquid::heatCapacityJPerKgK, liquid::viscosityPaS, liquid::conductivityWPerMK);
    }

    @ParameterizedTest
    @EnumSource
    void warmerIsLighterAndThinner(Glycol glycol) {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 2000; i++) {
            double mass = random.nextDouble(0, 0.6);
            double coolC = random.nextDouble(10, 69.9);
            double warmC = random.nextDouble(coolC + 0.05, 70);
            Liquid liquid = new GlycolWater(glycol, mass);
            String at = glycol + " " + mass + ", " + coolC + " to " + warmC + " °C, seed " + SEED;
            assertThat(liquid.densityKgPerM3(warmC)).as(at).isLessThan(liquid.densityKgPerM3(coolC));
            assertThat(liquid.viscosityPaS(warmC)).as(at).isLessThan(liquid.viscosityPaS(coolC));
        }
    }

    @ParameterizedTest
    @EnumSource
    void moreGlycolIsThickerHeavierAndCarriesLess(Glycol glycol) {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 2000; i++) {
            double temperatureC = random.nextDouble(10, 70);
            double less = random.nextDouble(0, 0.59);
            double more = random.nextDouble(less + 0.005, 0.6);
            Liquid thin = new GlycolWater(glycol, less);
            Liquid thick = new GlycolWater(glycol, more);
            String at = glycol + " " + less + " to " + more + " at " + temperatureC + " °C, seed " + SEED;
            assertThat(thick.viscosityPaS(temperatureC)).as(at).isGreaterThan(thin.viscosityPaS(temperatureC));
            assertThat(thick.densityKgPerM3(temperatureC)).as(at).isGreaterThan(thin.densityKgPerM3(temperatureC));
            assertThat(thick.heatCapacityJPerKgK(temperatureC))
                    .as(at)
                    .isLessThan(thin.heatCapacityJPerKgK(temperatureC));
            assertThat(thick.conductivityWPerMK(temperatureC)).as(at).isLessThan(thin.conductivityWPerMK(temperatureC));
            assertThat(thick.freezingC()).as(at).isLessThan(thin.freezingC());
        }
    }

    /** Towards no glycol the source's polynomials come near water: the two are independent fits. */
    @ParameterizedTest
    @EnumSource
    void withoutGlycolItIsNearlyWater(Glycol glycol) {
        Liquid none = new GlycolWater(glycol, 0);
        Liquid water = new Water();
        for (int t = 10; t <= 70; t++) {
            assertNear(none.densityKgPerM3(t), water.densityKgPerM3(t), 0.1);
            assertNear(none.heatCapacityJPerKgK(t), water.heatCapacityJPerKgK(t), 0.1);
            assertNear(none.viscosityPaS(t), water.viscosityPaS(t), 2);
            assertNear(none.conductivityWPerMK(t), water.conductivityWPerMK(t), 0.6);
        }
        assertThat(none.freezingC()).isBetween(-0.1, 0.01);
    }

    /** No step and nothing negative on the way of a solver, and the ends hold beyond. */
    @ParameterizedTest
    @EnumSource
    void isSmoothAndPositiveFromZeroToHundred(Glycol glycol) {
        for (int percent = 0; percent <= 60; percent += 5) {
            for (DoubleUnaryOperator property : properties(new GlycolWater(glycol, percent / 100.0))) {
                for (int i = 1; i <= 1000; i++) {
                    double value = property.applyAsDouble(i / 10.0);
                    assertThat(value).isPositive();
                    assertNear(value, property.applyAsDouble((i - 1) / 10.0), 1);
                }
                assertThat(property.applyAsDouble(-20)).isEqualTo(property.applyAsDouble(0));
                assertThat(property.applyAsDouble(120)).isEqualTo(property.applyAsDouble(100));
                assertThatThrownBy(() -> property.applyAsDouble(Double.NaN))
                        .hasMessage("temperature must be a number of °C but was NaN");
            }
        }
    }

    private static void assertNear(double actual, double expected, double percent) {
        assertThat(actual).isCloseTo(expected, Percentage.withPercentage(percent));
    }
}

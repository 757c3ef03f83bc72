package loopwright.loop.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import loopwright.loop.water.MeasuredLoss.Point;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredLossTest {

    private static final LiquidState WATER = LiquidState.WATER_20_C;

    /** Invented block: loss 3e11·Q^1.8 with flows in m³/s, worked out to full precision. */
    private static final MeasuredLoss BLOCK =
            new MeasuredLoss(List.of(new Point(0, 0), power(1e-5), power(2e-5), power(4e-5), power(6e-5), power(8e-5)));

    private static Point power(double flow) {
        return new Point(flow, 3e11 * Math.pow(flow, 1.8));
    }

    @Test
    void isExactAtThePointsAndFindsThePowerLawOutside() {
        for (double flow : new double[] {1e-5, 2e-5, 4e-5, 6e-5, 8e-5}) {
            assertThat(BLOCK.lossPa(flow, WATER)).isCloseTo(power(flow).lossPa(), Percentage.withPercentage(1e-10));
        }
        assertThat(BLOCK.exponent()).isCloseTo(1.8, within(1e-12));
        for (double flow : new double[] {1e-7, 5e-6, 9e-5, 3e-4}) {
            assertThat(BLOCK.lossPa(flow, WATER)).isCloseTo(power(flow).lossPa(), Percentage.withPercentage(1e-9));
        }
    }

    @Test
    void staysNearThePowerLawBetweenThePoints() {
        for (double flow = 1e-5; flow <= 8e-5; flow += 1e-6) {
            assertThat(BLOCK.lossPa(flow, WATER)).isCloseTo(power(flow).lossPa(), Percentage.withPercentage(2));
        }
    }

    /** Least squares by hand: ln Q 0, ln 2, 2·ln 2 and ln p 0, ln 3, ln 9 lie on a line of slope ln 3/ln 2 = 1.584963. */
    @Test
    void theExponentIsTheLineThroughTheLogarithms() {
        assertThat(measured(1, 1, 2, 3, 4, 9).exponent()).isCloseTo(1.584963, within(1e-6));
        // ln p 0, 0.5, 1.8 at ln Q 0, 0.5, 1 (a bend): slope = (1.8 − 0)/(1 − 0), as the middle is at the mean.
        double e = Math.E;
        assertThat(measured(1, 1, Math.sqrt(e), Math.sqrt(e), e, Math.exp(1.8)).exponent())
                .isCloseTo(1.8, within(1e-12));
    }

    @Test
    void theExponentStaysBetweenLaminarAndTurbulent() {
        assertThat(measured(1, 1, 2, 8).exponent()).isEqualTo(2);
        assertThat(measured(1, 1, 2, 1.5).exponent()).isEqualTo(1);
        MeasuredLoss steep = measured(1, 1, 2, 8);
        assertThat(steep.lossPa(4e-5, WATER)).isCloseTo(32, within(1e-9));
        assertThat(steep.lossPa(0.5e-5, WATER)).isCloseTo(0.25, within(1e-9));
    }

    /** (ρ/ρ0)^(n−1)·(μ/μ0)^(2−n): twice the density and 16 times the viscosity at n = 1.5 make √2·4 = 5.656854. */
    @Test
    void anotherLiquidScalesByDimension() {
        MeasuredLoss loss = measured(1, 1, 4, 8);
        LiquidState other = new LiquidState(2 * WATER.densityKgPerM3(), 16 * WATER.viscosityPaS());

        for (double flow : new double[] {0.3e-5, 1e-5, 2e-5, 9e-5}) {
            assertThat(loss.lossPa(flow, other) / loss.lossPa(flow, WATER)).isCloseTo(5.656854, within(1e-6));
            assertThat(loss.in(other).lossPa(flow)).isEqualTo(loss.lossPa(flow, other));
        }
    }

    /** A laminar part goes with viscosity alone, a fully turbulent one with density alone. */
    @Test
    void laminarScalesWithViscosityAndTurbulentWithDensity() {
        LiquidState other = new LiquidState(1.1 * WATER.densityKgPerM3(), 3 * WATER.viscosityPaS());

        assertThat(measured(1, 1, 2, 2).lossPa(1e-5, other)).isCloseTo(3, within(1e-12));
        assertThat(measured(1, 1, 2, 4).lossPa(1e-5, other)).isCloseTo(1.1, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"1e-5", "8e-5"})
    void joinsThePowerLawWithoutAStep(double flow) {
        double below = BLOCK.lossPa(Math.nextDown(flow), WATER);
        assertThat(BLOCK.lossPa(Math.nextUp(flow), WATER)).isCloseTo(below, Percentage.withPercentage(1e-9));
    }

    @Test
    void onePointAndNoneIsTheTradesPowerLaw() {
        MeasuredLoss radiator = new MeasuredLoss(List.of(new Point(0, 0), new Point(4e-5, 100)));
        // 2^1.8 = 3.482202
        assertThat(radiator.lossPa(8e-5, WATER)).isCloseTo(348.2202, within(1e-4));
        assertThat(radiator.lossPa(2e-5, WATER)).isCloseTo(100 / 3.482202, within(1e-5));
        assertThat(radiator.lossPa(0, WATER)).isZero();
    }

    @Test
    void refusesPointsThatAreNoLoss() {
        assertThatThrownBy(() -> new MeasuredLoss(List.of(new Point(1, 1)))).hasMessageContaining("needs two points");
        assertThatThrownBy(() -> measured(1, 2, 2, 2)).hasMessageContaining("point 2");
        assertThatThrownBy(() -> measured(0, 1, 2, 2)).hasMessageContaining("loss is above 0 Pa");
        assertThatThrownBy(() -> measured(1, 0, 2, 2)).hasMessageContaining("loss is above 0 Pa");
        assertThatThrownBy(() -> measured(-1, -1, 2, 2)).hasMessageContaining("loss is above 0 Pa");
    }

    /** Points from pairs of flow in 1e-5 m³/s and loss in Pa. */
    private static MeasuredLoss measured(double... pairs) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(new Point(pairs[i] * 1e-5, pairs[i + 1]));
        }
        return new MeasuredLoss(points);
    }
}

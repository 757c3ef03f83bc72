package loopwright.loop.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loopwright.loop.water.PumpCurve.Point;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PumpCurveTest {

    private static final PumpCurve PUMP =
            new PumpCurve(List.of(new Point(0, 100), new Point(1, 90), new Point(2, 60), new Point(3, 0)));

    /** Affinity laws (AMCA 201): speed ratio, flow ratio, pressure ratio. */
    @ParameterizedTest
    @CsvSource({"0.5, 1, 2, 4", "0.4, 0.6, 1.5, 2.25", "0.8, 1, 1.25, 1.5625", "1, 0.8, 0.8, 0.64", "1, 0.5, 0.5, 0.25"
    })
    void followsTheAffinityLaws(double from, double to, double flowRatio, double headRatio) {
        PumpCurve slow = PUMP.atSpeed(from);
        PumpCurve fast = PUMP.atSpeed(to);

        assertThat(fast.freeFlowM3PerS()).isCloseTo(flowRatio * slow.freeFlowM3PerS(), within(1e-12));
        assertThat(fast.shutOffPa()).isCloseTo(headRatio * slow.shutOffPa(), within(1e-12));
        for (double flow = 0; flow < slow.freeFlowM3PerS(); flow += 0.05) {
            assertThat(fast.headPa(flowRatio * flow)).isCloseTo(headRatio * slow.headPa(flow), within(1e-10));
        }
    }

    @Test
    void speedsAreOfTheFullOne() {
        assertThat(PUMP.atSpeed(0.5).atSpeed(0.8).shutOffPa()).isCloseTo(64, within(1e-12));
        assertThat(PUMP.atSpeed(0).shutOffPa()).isZero();
        assertThat(PUMP.atSpeed(0).headPa(1)).isZero();
    }

    @Test
    void goesThroughItsPointsAndNeverBelowNone() {
        assertThat(PUMP.headPa(0)).isEqualTo(100);
        assertThat(PUMP.headPa(1)).isEqualTo(90);
        assertThat(PUMP.headPa(2)).isEqualTo(60);
        assertThat(PUMP.headPa(3)).isZero();
        assertThat(PUMP.headPa(99)).isZero();
        assertThat(PUMP.freeFlowM3PerS()).isEqualTo(3);
    }

    /** By hand: from (1, 90) to (2, 60) it falls 30 a unit, so 60 is gone after 2 more. */
    @Test
    void aSheetThatEndsEarlyIsCarriedOn() {
        PumpCurve cut = new PumpCurve(List.of(new Point(0.5, 100), new Point(1, 90), new Point(2, 60)));

        assertThat(cut.freeFlowM3PerS()).isCloseTo(4, within(1e-12));
        assertThat(cut.headPa(2)).isEqualTo(60);
        assertThat(cut.headPa(3)).isCloseTo(30, within(2.0));
        assertThat(cut.headPa(0)).isEqualTo(100);
    }

    @Test
    void headsAddInSeriesAndFlowsInParallel() {
        PumpCurve half = PUMP.atSpeed(0.5);
        PumpsInSeries series = new PumpsInSeries(List.of(PUMP, half));
        PumpsInParallel parallel = new PumpsInParallel(PUMP, 2);

        assertThat(series.shutOffPa()).isEqualTo(125);
        assertThat(series.headPa(1)).isCloseTo(90 + 15, within(1e-12));
        assertThat(series.headPa(2)).isCloseTo(60, within(1e-12));
        assertThat(series.freeFlowM3PerS()).isEqualTo(3);
        assertThat(parallel.headPa(4)).isEqualTo(60);
        assertThat(parallel.shutOffPa()).isEqualTo(100);
        assertThat(parallel.freeFlowM3PerS()).isEqualTo(6);
    }

    @Test
    void theOrderOfPumpsChangesNothing() {
        PumpCurve half = PUMP.atSpeed(0.5);
        PumpCurve quick = PUMP.atSpeed(0.9);
        for (double flow = 0; flow < 3; flow += 0.1) {
            assertThat(new PumpsInSeries(List.of(quick, half)).headPa(flow))
                    .isCloseTo(new PumpsInSeries(List.of(half, quick)).headPa(flow), Percentage.withPercentage(1e-10));
        }
    }

    @Test
    void refusesWhatIsNoPump() {
        assertThatThrownBy(() -> new PumpCurve(List.of(new Point(0, 1)))).hasMessageContaining("two points");
        assertThatThrownBy(() -> new PumpCurve(List.of(new Point(0, 1), new Point(1, 2))))
                .hasMessageContaining("point 2");
        assertThatThrownBy(() -> new PumpCurve(List.of(new Point(0, 1), new Point(1, -1))))
                .hasMessageContaining("at least 0");
        assertThatThrownBy(() -> new PumpCurve(List.of(new Point(0, 1), new Point(1, 1))))
                .hasMessageContaining("ends level");
        assertThatThrownBy(() -> PUMP.atSpeed(1.01)).hasMessageContaining("in [0, 1] but was 1.01");
        assertThatThrownBy(() -> PUMP.headPa(-1)).hasMessageContaining("at least 0 m³/s");
        assertThatThrownBy(() -> new PumpsInSeries(List.of())).hasMessageContaining("need a pump");
        assertThatThrownBy(() -> new PumpsInParallel(PUMP, 0)).hasMessageContaining("at least 1 but was 0");
    }
}

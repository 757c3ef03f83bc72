package loopwright.loop.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import loopwright.loop.water.FlowBalance.Flowing;
import loopwright.loop.water.FlowBalance.Still;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlowBalanceTest {

    private static final LiquidState WATER = LiquidState.WATER_20_C;
    private static final double LITRE_PER_MIN = 1e-3 / 60;

    /** The textbook's pump, H = 10 − 0.5·Q². */
    private static final HeadCurve SQUARE = new HeadCurve() {
        @Override
        public double headPa(double flow) {
            return Math.max(0, 10 - 0.5 * flow * flow);
        }

        @Override
        public double shutOffPa() {
            return 10;
        }

        @Override
        public double freeFlowM3PerS() {
            return Math.sqrt(20);
        }
    };

    /** The textbook's system, 0.25·Q². */
    private static final Passage QUARTER_SQUARE = (flow, liquid) -> 0.25 * flow * flow;

    /** Closed form: H = 10 − 0.5·Q² against 0.25·Q²: one 3.6514837, two in parallel 5.1639778, two in series 4. */
    @Test
    void meetsTheClosedForm() {
        assertPoint(SQUARE, 3.6514837, 3.3333333);
        assertPoint(new PumpsInParallel(SQUARE, 2), 5.1639778, 6.6666667);
        assertPoint(new PumpsInSeries(List.of(SQUARE, SQUARE)), 4.0, 4.0);
    }

    private static void assertPoint(HeadCurve pumps, double flow, double head) {
        Flowing point = flowing(FlowBalance.find(pumps, QUARTER_SQUARE, WATER));
        assertThat(point.flowM3PerS()).isCloseTo(flow, within(5e-8));
        assertThat(point.headPa()).isCloseTo(head, within(5e-8));
    }

    /** √(10/0.75) to more digits than the accuracy claimed. */
    @Test
    void isAsAccurateAsItClaims() {
        assertThat(flowing(FlowBalance.find(SQUARE, QUARTER_SQUARE, WATER)).flowM3PerS())
                .isCloseTo(3.651483716701107, within(3.6e-12));
        for (double guess : new double[] {1e-9, 1, 3.6, 3.7, 4.4, 99, -1, Double.NaN}) {
            assertThat(flowing(FlowBalance.find(SQUARE, QUARTER_SQUARE, WATER, guess))
                            .flowM3PerS())
                    .as("guess %s", guess)
                    .isCloseTo(3.651483716701107, within(3.6e-12));
        }
    }

    /** Common practice, no source: loops of 34.6, 50.6 and 23 kPa at 3.8 L/min on the trade's three pumps, L/min. */
    @ParameterizedTest(name = "{0} kPa, pump {1} kPa")
    @CsvSource({
        "34.6, 38, 25, 3.9", "34.6, 49, 16.7, 4.3", "34.6, 20, 10, 2.6",
        "50.6, 38, 25, 3.2", "50.6, 49, 16.7, 3.6", "50.6, 20, 10, 2.2",
        "23, 38, 25, 4.8", "23, 49, 16.7, 5.3", "23, 20, 10, 3.2"
    })
    void crossesWhereTheTradeSays(double loopKPa, double headKPa, double freeLPerMin, double lPerMin) {
        List<PumpCurve.Point> sheet = new ArrayList<>();
        for (int i = 0; i <= 10; i++) {
            double flow = freeLPerMin * i / 10;
            double head = 1000 * headKPa * (1 - Math.pow(i / 10.0, 1.6));
            sheet.add(new PumpCurve.Point(flow * LITRE_PER_MIN, head));
        }
        List<MeasuredLoss.Point> loop = new ArrayList<>();
        for (double flow : new double[] {0, 1, 2, 3, 4, 6, 8}) {
            double loss = 1000 * loopKPa * Math.pow(flow / 3.8, 1.8);
            loop.add(new MeasuredLoss.Point(flow * LITRE_PER_MIN, loss));
        }
        Flowing point = flowing(FlowBalance.find(new PumpCurve(sheet), new MeasuredLoss(loop), WATER));
        assertThat(point.flowM3PerS() / LITRE_PER_MIN).isCloseTo(lPerMin, within(0.1));
    }

    /** Affinity: against a loss that goes with Q² flow goes with speed; against a laminar one it falls by more. */
    @Test
    void flowGoesWithSpeedAgainstASquare() {
        PumpCurve pump = new Dice(90).pump();
        Passage square = new SuddenChange(0.004, 0.02);
        Passage tube = new TubeRun(0.003, 1, 0);
        double full = flow(pump.atSpeed(1), square, WATER);
        double laminar = flow(pump.atSpeed(1), tube, new LiquidState(1000, 8e-3));
        for (double share : new double[] {0.3, 0.5, 0.8}) {
            assertThat(flow(pump.atSpeed(share), square, WATER))
                    .isCloseTo(share * full, Percentage.withPercentage(1e-9));
            assertThat(flow(pump.atSpeed(share), tube, new LiquidState(1000, 8e-3)))
                    .isLessThan(share * laminar * 0.99);
        }
    }

    @Test
    void withoutHeadOrWithoutAWayItStandsStill() {
        PumpCurve pump = new Dice(97).pump();
        PumpCurve dead = new PumpCurve(List.of(new PumpCurve.Point(0, 0), new PumpCurve.Point(1, 0)));

        assertThat(FlowBalance.find(dead, QUARTER_SQUARE, WATER)).isEqualTo(new Still("the pump has no head"));
        assertThat(FlowBalance.find(pump.atSpeed(0), QUARTER_SQUARE, WATER))
                .isEqualTo(new Still("the pump has no head"));
        Still closed = new Still("the passage lets nothing through");
        assertThat(FlowBalance.find(pump, Passage.CLOSED, WATER)).isEqualTo(closed);
        assertThat(FlowBalance.find(pump, new Series(List.of(QUARTER_SQUARE, Passage.CLOSED)), WATER))
                .isEqualTo(closed);
        assertThat(FlowBalance.find(pump, new Parallel(List.of(Passage.CLOSED, Passage.CLOSED)), WATER))
                .isEqualTo(closed);
    }

    /** A check valve's opposite: open up to 1, closed beyond. The pump would give 3.65; 1 passes. */
    @Test
    void aPassageMayCloseAtAFlow() {
        Passage limited = (flow, liquid) -> flow > 1 ? Double.POSITIVE_INFINITY : 0.25 * flow * flow;
        assertThat(flow(SQUARE, limited, WATER)).isCloseTo(1, within(1e-12));
    }

    /** Linear: 10 − 0.5·Q² = k·Q, so Q = 10/k for a large k, to 1e-12 of itself. */
    @Test
    void smallFlowsAreAsAccurate() {
        assertThat(flow(SQUARE, (flow, liquid) -> 1e9 * flow, WATER)).isCloseTo(1e-8, Percentage.withPercentage(1e-10));
    }

    @Test
    void aCurveThatBreaksItsPromiseIsNamed() {
        Passage lifting = (flow, liquid) -> -1;
        assertThatThrownBy(() -> FlowBalance.find(new PumpsInParallel(SQUARE, 3), lifting, WATER))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("no crossing found from 0 to 13.4")
                .hasMessageContaining("evaluations, the last 1.0 at 13.4")
                .hasMessageContaining("PumpsInParallel")
                .hasMessageContaining("densityKgPerM3=998.2065");
        Passage none = (flow, liquid) -> flow > 2 ? Double.NaN : flow;
        assertThatThrownBy(() -> FlowBalance.find(SQUARE, none, WATER)).hasMessageContaining("not a number");
    }

    private static double flow(HeadCurve pumps, Passage passage, LiquidState liquid) {
        return flowing(FlowBalance.find(pumps, passage, liquid)).flowM3PerS();
    }

    private static Flowing flowing(FlowBalance found) {
        assertThat(found).isInstanceOf(Flowing.class);
        return (Flowing) found;
    }
}

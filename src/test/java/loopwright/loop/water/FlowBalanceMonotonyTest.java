package loopwright.loop.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import loopwright.loop.water.FlowBalance.Flowing;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties over seeded random pumps, passages and liquids. */
class FlowBalanceMonotonyTest {

    /** Property: at the point found, the pumps give what the passages take. */
    @ParameterizedTest
    @ValueSource(longs = {91, 92, 93})
    void headIsWhatIsTaken(long seed) {
        Dice dice = new Dice(seed);
        for (int round = 0; round < 150; round++) {
            PumpCurve pump = dice.pump();
            Series loop = new Series(dice.passages(8));
            LiquidState liquid = dice.liquid();
            Flowing point = flowing(FlowBalance.find(pump, loop, liquid));
            assertThat(loop.lossPa(point.flowM3PerS(), liquid))
                    .as("seed %d round %d", seed, round)
                    .isCloseTo(point.headPa(), within(1e-10 * pump.shutOffPa()));
            assertThat(flow(pump, loop, liquid, point.flowM3PerS() * dice.between(0.5, 1.5)))
                    .isCloseTo(point.flowM3PerS(), Percentage.withPercentage(1e-9));
        }
    }

    /** Property: a faster pump, or one more, never lowers flow; one more passage never raises it; a bypass never lowers it. */
    @ParameterizedTest
    @ValueSource(longs = {94, 95, 96})
    void flowFollowsHeadAndResistance(long seed) {
        Dice dice = new Dice(seed);
        for (int round = 0; round < 100; round++) {
            PumpCurve pump = dice.pump();
            List<Passage> passages = dice.passages(6);
            LiquidState liquid = dice.liquid();
            Passage loop = new Series(passages);
            double slack = 1 + 1e-10;
            double flow = flow(pump, loop, liquid) / slack;
            String at = "seed %d round %d".formatted(seed, round);
            assertThat(flow(pump.atSpeed(1), loop, liquid)).as(at).isGreaterThanOrEqualTo(flow);
            assertThat(flow(new PumpsInSeries(List.of(pump, dice.pump())), loop, liquid))
                    .as(at)
                    .isGreaterThanOrEqualTo(flow);
            assertThat(flow(new PumpsInParallel(pump, 2), loop, liquid)).as(at).isGreaterThanOrEqualTo(flow);
            assertThat(flow(pump, new Parallel(List.of(loop, dice.passage())), liquid))
                    .as(at)
                    .isGreaterThanOrEqualTo(flow);
            List<Passage> more = new ArrayList<>(passages);
            more.add(dice.below(passages.size() + 1), dice.passage());
            assertThat(flow(pump, new Series(more), liquid)).as(at).isLessThanOrEqualTo(flow * slack * slack);
        }
    }

    private static double flow(HeadCurve pumps, Passage passage, LiquidState liquid) {
        return flowing(FlowBalance.find(pumps, passage, liquid)).flowM3PerS();
    }

    private static double flow(HeadCurve pumps, Passage passage, LiquidState liquid, double guess) {
        return flowing(FlowBalance.find(pumps, passage, liquid, guess)).flowM3PerS();
    }

    private static Flowing flowing(FlowBalance found) {
        assertThat(found).isInstanceOf(Flowing.class);
        return (Flowing) found;
    }
}

package loopwright.loop.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every passage promises, and passages together. */
class PassageTest {

    private static final LiquidState WATER = LiquidState.WATER_20_C;

    /** Loss 0.25·Q², as in the textbook check of pumps in parallel. */
    private static final Passage QUARTER_SQUARE = (flow, liquid) -> 0.25 * flow * flow;

    /** Property: over random passages and liquids, 0 at 0 and strictly more with more flow; the prepared curve is the same. */
    @ParameterizedTest
    @ValueSource(longs = {81, 82, 83})
    void lossRisesStrictlyWithFlow(long seed) {
        Dice dice = new Dice(seed);
        for (int round = 0; round < 150; round++) {
            Passage passage = dice.passage();
            LiquidState liquid = dice.liquid();
            LossCurve curve = passage.in(liquid);
            assertThat(curve.lossPa(0)).isZero();
            double before = 0;
            for (double flow = 1e-7; flow < 6e-4; flow *= dice.between(1.001, 1.2)) {
                double loss = passage.lossPa(flow, liquid);
                assertThat(loss).as("seed %d %s flow %s", seed, passage, flow).isGreaterThan(before);
                assertThat(curve.lossPa(flow)).isCloseTo(loss, Percentage.withPercentage(1e-9));
                before = loss;
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {84, 85})
    void orderInASeriesChangesNothing(long seed) {
        Dice dice = new Dice(seed);
        for (int round = 0; round < 100; round++) {
            List<Passage> passages = new ArrayList<>(dice.passages(8));
            LiquidState liquid = dice.liquid();
            double flow = dice.between(1e-6, 3e-4);
            double sum =
                    passages.stream().mapToDouble(p -> p.lossPa(flow, liquid)).sum();
            double loss = new Series(passages).lossPa(flow, liquid);
            Collections.shuffle(passages, new Random(seed + round));
            assertThat(new Series(passages).in(liquid).lossPa(flow))
                    .as("seed %d round %d", seed, round)
                    .isCloseTo(loss, Percentage.withPercentage(1e-10))
                    .isCloseTo(sum, Percentage.withPercentage(1e-10));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {86, 87})
    void twoEqualBranchesCarryHalfEach(long seed) {
        Dice dice = new Dice(seed);
        for (int round = 0; round < 50; round++) {
            Passage branch = dice.passage();
            LiquidState liquid = dice.liquid();
            double flow = dice.between(1e-6, 3e-4);
            Parallel both = new Parallel(List.of(branch, branch));
            assertThat(both.lossPa(flow, liquid))
                    .as("seed %d round %d %s", seed, round, branch)
                    .isCloseTo(branch.lossPa(flow / 2, liquid), Percentage.withPercentage(1e-9));
            assertThat(both.branchFlowsM3PerS(flow, liquid))
                    .allSatisfy(each -> assertThat(each).isCloseTo(flow / 2, Percentage.withPercentage(1e-9)));
        }
    }

    /** Property: over random branches, the flows add to the whole and each takes the common loss. */
    @ParameterizedTest
    @ValueSource(longs = {88, 89})
    void branchesShareTheLossAndTheFlow(long seed) {
        Dice dice = new Dice(seed);
        for (int round = 0; round < 100; round++) {
            List<Passage> branches = dice.passages(4);
            LiquidState liquid = dice.liquid();
            double flow = dice.between(1e-6, 3e-4);
            Parallel all = new Parallel(branches);
            double loss = all.lossPa(flow, liquid);
            List<Double> flows = all.branchFlowsM3PerS(flow, liquid);
            double sum = 0;
            for (int i = 0; i < branches.size(); i++) {
                sum += flows.get(i);
                assertThat(branches.get(i).lossPa(flows.get(i), liquid))
                        .as("seed %d round %d branch %d", seed, round, i)
                        .isCloseTo(loss, Percentage.withPercentage(1e-8));
            }
            assertThat(sum).isCloseTo(flow, Percentage.withPercentage(1e-12));
        }
    }

    /** By hand: 0.25·Q² beside Q²: flows 2 : 1, so of 3 the one carries 2 and the loss is 1. */
    @Test
    void splitsByHand() {
        Parallel split = new Parallel(List.of(QUARTER_SQUARE, (flow, liquid) -> flow * flow));

        assertThat(split.lossPa(3, WATER)).isCloseTo(1, within(1e-12));
        assertThat(split.branchFlowsM3PerS(3, WATER).get(0)).isCloseTo(2, within(1e-12));
        assertThat(split.branchFlowsM3PerS(3, WATER).get(1)).isCloseTo(1, within(1e-12));
        assertThat(split.branchFlowsM3PerS(0, WATER)).containsExactly(0.0, 0.0);
    }

    @Test
    void aClosedBranchCarriesNothingAndClosesASeries() {
        Parallel oneClosed = new Parallel(List.of(Passage.CLOSED, QUARTER_SQUARE));
        Parallel closed = new Parallel(List.of(Passage.CLOSED, Passage.CLOSED));

        assertThat(oneClosed.lossPa(2, WATER)).isCloseTo(1, within(1e-12));
        assertThat(oneClosed.branchFlowsM3PerS(2, WATER).get(0)).isCloseTo(0, within(1e-20));
        assertThat(closed.lossPa(1, WATER)).isInfinite();
        assertThatThrownBy(() -> closed.branchFlowsM3PerS(1, WATER)).hasMessageContaining("every branch is closed");
        assertThat(new Series(List.of(QUARTER_SQUARE, Passage.CLOSED)).lossPa(1, WATER))
                .isInfinite();
    }

    @Test
    void refusesFlowsThatAreNoneAndNoPassages() {
        Dice dice = new Dice(80);
        for (int i = 0; i < 40; i++) {
            Passage passage = dice.passage();
            for (double flow : new double[] {-1e-9, Double.NaN, Double.POSITIVE_INFINITY}) {
                assertThatThrownBy(() -> passage.lossPa(flow, WATER))
                        .hasMessage("flow must be at least 0 m³/s and finite but was " + flow);
            }
        }
        assertThatThrownBy(() -> Passage.CLOSED.lossPa(-1, WATER)).hasMessageContaining("at least 0 m³/s");
        assertThatThrownBy(() -> new Series(List.of())).hasMessageContaining("needs a passage");
        assertThatThrownBy(() -> new Parallel(List.of())).hasMessageContaining("need a passage");
    }
}

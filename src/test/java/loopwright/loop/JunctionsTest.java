package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.BriefLimits.HeatLimits;
import loopwright.catalog.brief.LoopWish.BlockOrder;
import loopwright.catalog.standard.Practice;
import loopwright.testing.MachineParts;
import org.junit.jupiter.api.Test;

class JunctionsTest {

    private static final Practice.BlockStep STEP = new Practice.BlockStep(4, 0.25, 0.5);

    private static final double LITRE_PER_MIN = 1e-3 / 60;

    @Test
    void atTheRatedFlowABlockHasItsSheetsResistance() {
        assertThat(Junctions.resistanceKPerW(0.18, 4 * LITRE_PER_MIN, STEP)).isCloseTo(0.18, within(1e-12));
    }

    /** A quarter of the flow doubles the film's quarter: 0.75 + 0.25·2, by hand. */
    @Test
    void slowCoolantMakesTheFilmWorse() {
        assertThat(Junctions.resistanceKPerW(0.2, LITRE_PER_MIN, STEP)).isCloseTo(0.25, within(1e-12));
        assertThat(Junctions.resistanceKPerW(0.2, 16 * LITRE_PER_MIN, STEP)).isCloseTo(0.175, within(1e-12));
    }

    /** Common practice, no source: below 1 L/min the step grows by 1 to 3 K for each halving of the flow. */
    @Test
    void halvingASlowFlowCostsAFewKelvin() {
        double heatW = 120;
        double one = heatW * Junctions.resistanceKPerW(0.1, LITRE_PER_MIN, STEP);
        double half = heatW * Junctions.resistanceKPerW(0.1, 0.5 * LITRE_PER_MIN, STEP);
        double quarter = heatW * Junctions.resistanceKPerW(0.1, 0.25 * LITRE_PER_MIN, STEP);
        assertThat(half - one).isBetween(1.0, 3.0);
        assertThat(quarter - half).isGreaterThan(half - one);
    }

    /** Common practice, no source: 150 W at 0.18 K/W is 27 K above the coolant. */
    @Test
    void aPartIsAsMuchWarmerAsItsHeatTimesItsResistance() {
        Machine machine = Cooled.with(150, 0.18, BlockOrder.SERIES);
        Steady state = Cooled.steady(machine);
        double flow = state.water().flowM3PerS();
        double rated = flow / LITRE_PER_MIN;
        Junctions.Junction processor =
                Junctions.of(machine, state, practice(rated)).get(0);

        assertThat(processor.name()).isEqualTo(Machine.PROCESSOR);
        assertThat(processor.stepK()).isCloseTo(27, within(1e-9));
        Steady.Stop stop = state.stops().get(1);
        assertThat(processor.temperatureC()).isCloseTo((stop.inC() + stop.outC()) / 2 + 27, within(1e-9));
    }

    /** Blocks side by side get less flow each, so their steps are larger. */
    @Test
    void besideEachOtherBlocksGetLessFlow() {
        Machine series = Cooled.with(150, 0.18, BlockOrder.SERIES);
        Machine parallel = Cooled.with(150, 0.18, BlockOrder.PARALLEL);
        List<Junctions.Junction> one = Junctions.of(series, Cooled.steady(series), MachineParts.PRACTICE);
        List<Junctions.Junction> two = Junctions.of(parallel, Cooled.steady(parallel), MachineParts.PRACTICE);

        assertThat(two).hasSameSizeAs(one);
        for (int i = 0; i < one.size(); i++) {
            assertThat(two.get(i).stepK()).isGreaterThan(one.get(i).stepK());
        }
    }

    @Test
    void keepsOrBreaksEachLimit() {
        Machine machine = Cooled.with(150, 0.18, BlockOrder.SERIES);
        Steady state = Cooled.steady(machine);
        List<Junctions.Junction> at = Junctions.of(machine, state, MachineParts.PRACTICE);
        double processor = at.get(0).temperatureC();
        double card = at.get(1).temperatureC();

        assertThat(keeps(machine, state, limits(processor, card, state.caseC())))
                .isTrue();
        assertThat(keeps(machine, state, limits(processor - 0.01, card, state.caseC())))
                .isFalse();
        assertThat(keeps(machine, state, limits(processor, card - 0.01, state.caseC())))
                .isFalse();
        assertThat(keeps(machine, state, limits(processor, card, state.caseC() - 0.01)))
                .isFalse();
        assertThat(keeps(machine, state, HeatLimits.NONE)).isTrue();
    }

    private static boolean keeps(Machine machine, Steady state, HeatLimits limits) {
        return Junctions.keep(machine, state, MachineParts.PRACTICE, limits);
    }

    private static HeatLimits limits(double processorC, double cardC, double caseC) {
        return new HeatLimits(Optional.empty(), Optional.of(processorC), Optional.of(cardC), Optional.of(caseC));
    }

    private static Practice practice(double ratedLPerMin) {
        Practice usual = MachineParts.PRACTICE;
        Practice.Heat heat = usual.heat();
        return new Practice(
                usual.room(),
                usual.air(),
                new Practice.Heat(
                        heat.miscHeatW(),
                        heat.blockCaptureShare(),
                        heat.supplyHeatShare(),
                        heat.supplyEfficiencyPercent(),
                        new Practice.BlockStep(ratedLPerMin, 0.25, 0.5)),
                usual.loop(),
                usual.core());
    }
}

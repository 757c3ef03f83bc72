package loopwright.loop.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.part.Radiator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.AggregateWith;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.aggregator.ArgumentsAggregator;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Cores with the workshop's usual fins and tubes, uncalibrated, with a 120 × 25 pressure fan pushing, P = Pmax·(1 − (Q/Qmax)^1.5)
 * with 117 m³/h and 28.3 Pa at 1850 rpm: within what benches usually find. Common practice, no source; water at 4 L/min.
 */
class TradeRangeTest {

    private static final int[] SPEEDS_RPM = {750, 1000, 1300, 1500, 1850, 2000};

    /** Columns: core mm, fins an inch, tube rows, then W at 10 K of one section at the speeds above. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "20 body, 12, 18, 1, 45, 58, 71, 80, 93, 98",
        "30 body, 20, 16, 1, 47, 63, 80, 91, 108, 115",
        "45 body, 33, 13, 2, 47, 65, 86, 98, 119, 127",
        "60 body, 47, 11, 2, 47, 66, 89, 102, 125, 134",
        "80 body, 66, 10, 4, 44, 64, 88, 103, 128, 138"
    })
    void everyThicknessIsNearWhatBenchesFind(
            String body, double depthMm, double finsPerInch, int rows, @AggregateWith(Watts.class) List<Double> watts) {
        RadiatorCore core = SampleCores.core(SampleCores.radiator("1x120", depthMm, finsPerInch, rows));
        for (int i = 0; i < SPEEDS_RPM.length; i++) {
            assertThat(wattsAt10K(core, SPEEDS_RPM[i]))
                    .as("%s at %s rpm", body, SPEEDS_RPM[i])
                    .isCloseTo(watts.get(i), Percentage.withPercentage(14));
        }
    }

    /** The commonest body: within 7 % at every speed, and 63, 80 and 91 W within 4 %. */
    @Test
    void theCommonestBodyIsClose() {
        RadiatorCore core = SampleCores.core(SampleCores.radiator("1x120", 20, 16, 1));

        assertThat(wattsAt10K(core, 1000)).isCloseTo(63, Percentage.withPercentage(4));
        assertThat(wattsAt10K(core, 1300)).isCloseTo(80, Percentage.withPercentage(4));
        assertThat(wattsAt10K(core, 1500)).isCloseTo(91, Percentage.withPercentage(4));
        assertThat(wattsAt10K(core, 750)).isCloseTo(47, Percentage.withPercentage(7));
    }

    /** ΔP = t·(FPI/12)^1.5·(0.22·v + 0.16·v²), t in mm, trade practice from memory; it has no low and no high branch. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 1.5})
    void theAirsResistanceIsNearTheTrades(double v) {
        double[][] cores = {{12, 18, 1}, {20, 16, 1}, {33, 13, 2}, {47, 11, 2}, {66, 10, 4}};
        for (double[] c : cores) {
            CoreInAir core = SampleCores.core(SampleCores.radiator("1x120", c[0], c[1], (int) c[2]))
                    .in(SampleCores.AIR);
            double trade = c[0] * Math.pow(c[1] / 12, 1.5) * (0.22 * v + 0.16 * v * v);
            assertThat(core.lossPa(v)).as("%s mm", c[0]).isCloseTo(trade, Percentage.withPercentage(37));
        }
    }

    /** From 12 mm of core to 66 at 750 rpm: within 15 % of the plain 20 mm core; at 2000 rpm the deep core gains a quarter. */
    @Test
    void thicknessBuysAlmostNothingFromSlowFans() {
        List<Double> slow = new ArrayList<>();
        List<Double> fast = new ArrayList<>();
        double[][] cores = {{12, 18, 1}, {20, 16, 1}, {33, 13, 2}, {47, 11, 2}, {66, 10, 4}};
        for (double[] c : cores) {
            RadiatorCore core = SampleCores.core(SampleCores.radiator("1x120", c[0], c[1], (int) c[2]));
            slow.add(wattsAt10K(core, 750));
            fast.add(wattsAt10K(core, 2000));
        }
        double plain = slow.get(1);
        assertThat(slow).allSatisfy(w -> assertThat(w).isBetween(0.85 * plain, 1.1 * plain));
        assertThat(fast.get(4)).isGreaterThan(1.25 * fast.get(1));
    }

    /** Half as much again of the face brings half as much again of the heat. */
    @Test
    void areaBuysEverything() {
        RadiatorCore two = SampleCores.core(SampleCores.radiator("2x120", 20, 16, 1));
        RadiatorCore three = SampleCores.core(SampleCores.radiator("3x120", 20, 16, 1));

        assertThat(wattsAt10K(three, 1000) / wattsAt10K(two, 1000)).isBetween(1.45, 1.55);
    }

    /** Below 1 L/min it shows, above 2 L/min more flow buys little. */
    @Test
    void coolantFlowMattersLittle() {
        RadiatorCore core = SampleCores.core(SampleCores.radiator("2x120", 20, 16, 1));
        double usual = SampleCores.conductance(core, 0.8, 4);

        assertThat(SampleCores.conductance(core, 0.8, 1)).isBetween(0.9 * usual, 1.02 * usual);
        assertThat(SampleCores.conductance(core, 0.8, 8)).isBetween(usual, 1.15 * usual);
    }

    /** The demo's measured radiators keep the trade's watts: 63 at 1000 and 80 at 1300 rpm a section. */
    @ParameterizedTest
    @ValueSource(strings = {"rad-1x120-30a", "rad-2x120-30a"})
    void measuredRadiatorsKeepTheTradesWatts(String id) {
        Radiator radiator = SampleCores.DEMO.all(Radiator.class).stream()
                .filter(r -> r.id().equals(id))
                .findFirst()
                .orElseThrow();
        RadiatorCore core = SampleCores.core(radiator);
        int sections = radiator.pattern().fans();

        assertThat(wattsAt10K(core, 1000) / sections).isCloseTo(63, Percentage.withPercentage(6));
        assertThat(wattsAt10K(core, 1300) / sections).isCloseTo(80, Percentage.withPercentage(6));
    }

    /** W at 10 K of the whole radiator, at 4 L/min. */
    private static double wattsAt10K(RadiatorCore core, double rpm) {
        CoreInAir air = core.in(SampleCores.AIR);
        double share = rpm / 1850;
        double freeM3PerS = 117 * share / 3600;
        int sections = (int) Math.round(core.faceAreaM2() / 0.0132);
        double low = 0;
        double high = freeM3PerS;
        for (int i = 0; i < 60; i++) {
            double flow = (low + high) / 2;
            double fanPa = 28.3 * share * share * (1 - Math.pow(flow / freeM3PerS, 1.5));
            if (fanPa > air.lossPa(sections * flow / core.faceAreaM2())) {
                low = flow;
            } else {
                high = flow;
            }
        }
        return 10 * SampleCores.conductance(core, sections * low / core.faceAreaM2(), 4);
    }

    /** The last columns of a row. */
    static final class Watts implements ArgumentsAggregator {
        @Override
        public List<Double> aggregateArguments(ArgumentsAccessor row, ParameterContext c) {
            List<Double> watts = new ArrayList<>();
            for (int i = 4; i < row.size(); i++) {
                watts.add(row.getDouble(i));
            }
            return watts;
        }
    }
}

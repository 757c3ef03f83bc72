package loopwright.loop.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Crossflow among the other arrangements, and in textbook examples. */
class ArrangementsTest {

    /**
     * Validation. Formulas of Kays and London and of Incropera and DeWitt, Table 11.3, evaluated in double precision. Columns:
     * transfer units, ratio, counterflow, parallel, larger capacity mixed, smaller mixed, both mixed, both unmixed.
     */
    @ParameterizedTest(name = "{0} transfer units, ratio {1}")
    @CsvSource({
        "0.5, 0.5, 0.36226557, 0.35175563, 0.35718290, 0.35750641, 0.35690069, 0.35782705",
        "0.5, 1, 0.33333333, 0.31606028, 0.32528800, 0.32528800, 0.32436064, 0.32632998",
        "1, 0.5, 0.56473340, 0.51791323, 0.54196899, 0.54476371, 0.53974587, 0.54748983",
        "1, 1, 0.50000000, 0.43233236, 0.46853639, 0.46853639, 0.46211716, 0.47622239",
        "2, 0.5, 0.77460033, 0.63347529, 0.70201272, 0.71754644, 0.69084342, 0.73240925",
        "2, 1, 0.66666667, 0.49084218, 0.57880725, 0.57880725, 0.55156125, 0.61424724",
        "3, 0.5, 0.87442515, 0.65926067, 0.75636230, 0.78854428, 0.73385295, 0.81970828",
        "3, 1, 0.75000000, 0.49876062, 0.61334132, 0.61334132, 0.56450673, 0.68129111"
    })
    void everyArrangementFollowsItsTable(
            double n,
            double r,
            double counter,
            double parallel,
            double larger,
            double smaller,
            double both,
            double none) {
        assertThat(Arrangements.counterflow(n, r)).isCloseTo(counter, within(1e-7));
        assertThat(Arrangements.parallel(n, r)).isCloseTo(parallel, within(1e-7));
        assertThat(Arrangements.largerMixed(n, r)).isCloseTo(larger, within(1e-7));
        assertThat(Arrangements.smallerMixed(n, r)).isCloseTo(smaller, within(1e-7));
        assertThat(Arrangements.bothMixed(n, r)).isCloseTo(both, within(1e-7));
        assertThat(Crossflow.effectiveness(n, r)).isCloseTo(none, within(1e-7));
    }

    @Test
    void crossflowLiesBetweenSmallerMixedAndCounterflow() {
        for (int i = 1; i < 400; i++) {
            double n = i / 20.0;
            for (int k = 1; k <= 20; k++) {
                double r = k / 20.0;
                String at = "ntu " + n + ", ratio " + r;
                double here = Crossflow.effectiveness(n, r);
                assertThat(here).as(at).isLessThanOrEqualTo(Arrangements.counterflow(n, r) + 1e-12);
                assertThat(here).as(at).isGreaterThanOrEqualTo(Arrangements.smallerMixed(n, r) - 1e-12);
                assertThat(Arrangements.smallerMixed(n, r))
                        .isGreaterThanOrEqualTo(Arrangements.largerMixed(n, r) - 1e-12);
                assertThat(Arrangements.largerMixed(n, r)).isGreaterThanOrEqualTo(Arrangements.bothMixed(n, r) - 1e-12);
                assertThat(Arrangements.bothMixed(n, r)).isGreaterThanOrEqualTo(Arrangements.parallel(n, r) - 1e-12);
            }
        }
    }

    /**
     * Validation. Correction factor of the logarithmic mean, from the exact solution: counterflow's transfer units over these.
     * Columns: transfer units, then the factor at ratios 0.25, 0.5, 0.75, 1.
     */
    @ParameterizedTest(name = "{0} transfer units")
    @CsvSource({
        "0.5, 0.99117, 0.98308, 0.97565, 0.96881",
        "1, 0.97035, 0.94618, 0.92612, 0.90921",
        "2, 0.91620, 0.86227, 0.82430, 0.79617",
        "3, 0.86319, 0.79053, 0.74435, 0.71255"
    })
    void correctsTheLogarithmicMean(double n, double quarter, double half, double threeQuarters, double equal) {
        double[] table = {quarter, half, threeQuarters, equal};
        for (int i = 0; i < table.length; i++) {
            double r = (i + 1) / 4.0;
            double factor = Arrangements.counterflowTransferUnits(Crossflow.effectiveness(n, r), r) / n;
            assertThat(factor).isCloseTo(table[i], within(6e-6));
        }
    }

    /**
     * Validation. Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed., example 11.3: gas 300 to 100 °C, water
     * 1 kg/s from 35 to 125 °C with 4197 J/(kg·K), 100 W/(m²·K). Published (chart readings): 39.66 m². Exact: 39.300 m².
     */
    @Test
    void sizesTheWasteHeatExchanger() {
        double waterRate = 4197;
        double gasRate = waterRate * 90 / 200;
        double effectiveness = 200.0 / 265;
        double areaM2 = Crossflow.transferUnits(effectiveness, gasRate / waterRate) * gasRate / 100;

        assertThat(areaM2).isCloseTo(39.300, Percentage.withPercentage(0.01));
        assertThat(areaM2).isCloseTo(39.66, Percentage.withPercentage(3));
    }

    /**
     * Validation. Som, Introduction to Heat Transfer, chapter 10, example 7: water 7 kg/s with 4180 J/(kg·K) at 20 °C, air 10 kg/s
     * with 1010 J/(kg·K) at 125 °C, 220 W/(m²·K) on 250 m². Published (by an approximation): 1 MW, air leaves at 26 °C.
     * Exact: 1005.98 kW, 25.398 °C.
     */
    @Test
    void coolsTheCompressedAir() {
        double waterRate = 7 * 4180;
        double airRate = 10 * 1010;
        double effectiveness = Crossflow.effectiveness(220.0 * 250 / airRate, airRate / waterRate);
        double heatW = effectiveness * airRate * 105;

        assertThat(effectiveness).isCloseTo(0.948590, Percentage.withPercentage(0.01));
        assertThat(heatW).isCloseTo(1_005_980, Percentage.withPercentage(0.01));
        assertThat(heatW).isCloseTo(1e6, Percentage.withPercentage(3));
        assertThat(125 - heatW / airRate).isCloseTo(25.398, Percentage.withPercentage(0.01));
        assertThat(125 - heatW / airRate).isCloseTo(26, Percentage.withPercentage(3));
    }

    /**
     * Validation. Cengel, Heat Transfer, "Cooling of water in an automotive radiator" (from memory): 40 tubes of 5 mm bore and 65 cm,
     * water 0.6 kg/s with 4195 J/(kg·K) from 90 to 65 °C, air 20 to 40 °C. Published: 3341 W/(m²·K), factor 0.97. Exact:
     * 3345.9 W/(m²·K), factor 0.970355.
     */
    @Test
    void findsTheTransferOfTheAutomotiveRadiator() {
        double waterRate = 0.6 * 4195;
        double airRate = waterRate * 25 / 20;
        double areaM2 = 40 * Math.PI * 0.005 * 0.65;
        double effectiveness = 25.0 / 70;
        double ratio = waterRate / airRate;
        double ntu = Crossflow.transferUnits(effectiveness, ratio);
        double transfer = ntu * waterRate / areaM2;

        assertThat(transfer).isCloseTo(3345.9, Percentage.withPercentage(0.01));
        assertThat(transfer).isCloseTo(3341, Percentage.withPercentage(3));
        assertThat(Arrangements.counterflowTransferUnits(effectiveness, ratio) / ntu)
                .isCloseTo(0.970355, within(1e-5));
    }
}

package loopwright.loop.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The exact solution against tables and against a form that shares nothing with it. */
class CrossflowTest {

    private static final double[] RATIOS = {0, 0.25, 0.5, 0.75, 1};

    /**
     * Validation. J. L. Mason, Heat Transfer in Cross-Flow, Proc. 2nd US Nat. Congress of Applied Mechanics, ASME 1954: the series
     * evaluated in double precision by incomplete gamma functions, agreeing with the Bessel form to 1e-15 and with a direct
     * integration of the two energy balances to 1e-10. Columns: transfer units, then effectiveness at the ratios above.
     */
    @ParameterizedTest(name = "{0} transfer units")
    @CsvSource({
        "0.25, 0.22119922, 0.21522426, 0.20946231, 0.20390491, 0.19854393",
        "0.5, 0.39346934, 0.37509443, 0.35782705, 0.34159477, 0.32632998",
        "0.75, 0.52763345, 0.49568463, 0.46613698, 0.43880799, 0.41352700",
        "1, 0.63212056, 0.58801133, 0.54748983, 0.51030865, 0.47622239",
        "1.25, 0.71349520, 0.65971371, 0.61021557, 0.56483918, 0.52336891",
        "1.5, 0.77686984, 0.71615376, 0.65973206, 0.60774986, 0.56017293",
        "1.75, 0.82622606, 0.76114231, 0.69964485, 0.64242583, 0.58979759",
        "2, 0.86466472, 0.79742231, 0.73240925, 0.67108029, 0.61424724",
        "2.5, 0.91791500, 0.85133190, 0.78284199, 0.71584192, 0.65248692",
        "3, 0.95021293, 0.88845748, 0.81970828, 0.74940640, 0.68129111",
        "3.5, 0.96980262, 0.91482202, 0.84773403, 0.77567034, 0.70397302",
        "4, 0.98168436, 0.93401982, 0.86968663, 0.79688361, 0.72242572",
        "4.5, 0.98889100, 0.94828852, 0.88728865, 0.81443972, 0.73781549",
        "5, 0.99326205, 0.95907428, 0.90166775, 0.82925122, 0.75090398"
    })
    void followsMasonsTable(double ntu, double none, double quarter, double half, double threeQuarters, double equal) {
        double[] table = {none, quarter, half, threeQuarters, equal};
        for (int i = 0; i < RATIOS.length; i++) {
            assertThat(Crossflow.effectiveness(ntu, RATIOS[i])).isCloseTo(table[i], within(1e-7));
        }
    }

    /** Independent check. Both unmixed in modified Bessel functions (Shah and Sekulic 2003, Table 3.3, form of Baclic). */
    @Test
    void agreesWithTheBesselForm() {
        for (int i = 1; i <= 200; i++) {
            double ntu = i / 10.0;
            for (int k = 1; k <= 20; k++) {
                double ratio = k / 20.0;
                assertThat(Crossflow.effectiveness(ntu, ratio))
                        .as("%s transfer units, ratio %s", ntu, ratio)
                        .isCloseTo(bessel(ntu, ratio), within(1e-9));
            }
        }
    }

    private static double bessel(double ntu, double ratio) {
        double x = 2 * ntu * Math.sqrt(ratio);
        double sum = besselI(0, x) + Math.sqrt(ratio) * besselI(1, x);
        for (int n = 2; n <= 150; n++) {
            sum -= (1 - ratio) / ratio * StrictMath.pow(ratio, n / 2.0) * besselI(n, x);
        }
        return 1 - StrictMath.exp(-(1 + ratio) * ntu) * sum;
    }

    /** I_n(x) by its power series, all terms positive. */
    private static double besselI(int n, double x) {
        double term = 1;
        for (int k = 1; k <= n; k++) {
            term *= x / 2 / k;
        }
        double sum = term;
        for (int k = 1; k < 300; k++) {
            term *= x * x / 4 / k / (k + n);
            sum += term;
        }
        return sum;
    }

    /** Validation. A side that boils or condenses: 1 − e^−NTU, whatever the arrangement. */
    @Test
    void tendsToOneSideAtOneTemperature() {
        for (double ntu : new double[] {1e-12, 1e-3, 0.1, 1, 5, 20}) {
            double limit = -Math.expm1(-ntu);
            assertThat(Crossflow.effectiveness(ntu, 0)).isCloseTo(limit, within(1e-15));
            assertThat(Crossflow.effectiveness(ntu, 1e-9)).isCloseTo(limit, within(1e-8 * limit));
        }
    }

    /** For little transfer ε = NTU·(1 − NTU·(1 + Cr)/2 + …); nothing may cancel on the way there. */
    @Test
    void isRightToTheLastDigitsForLittleTransfer() {
        for (double ntu : new double[] {1e-300, 1e-17, 1e-12, 1e-9, 1e-7}) {
            for (double ratio : RATIOS) {
                double second = ntu * (1 - ntu * (1 + ratio) / 2);
                assertThat(Crossflow.effectiveness(ntu, ratio)).isCloseTo(second, within(second * 1e-12));
            }
        }
    }

    @Test
    void risesWithTransferAndFallsWithTheRatio() {
        Random random = new Random(20_261_125);
        for (int i = 0; i < 5000; i++) {
            double ntu = 20 * random.nextDouble();
            double ratio = random.nextDouble();
            double more = ntu + 0.01;
            double closer = Math.min(1, ratio + 0.01);
            String at = "seed 20261125, ntu " + ntu + ", ratio " + ratio;
            double here = Crossflow.effectiveness(ntu, ratio);
            assertThat(here).as(at).isBetween(0.0, 1.0);
            assertThat(Crossflow.effectiveness(more, ratio)).as(at).isGreaterThanOrEqualTo(here);
            assertThat(Crossflow.effectiveness(ntu, closer)).as(at).isLessThanOrEqualTo(here + 1e-15);
        }
    }

    @Test
    void isHeldPastThreeHundredTransferUnits() {
        assertThat(Crossflow.effectiveness(0, 0.5)).isZero();
        assertThat(Crossflow.effectiveness(1e9, 1)).isEqualTo(Crossflow.effectiveness(300, 1));
        assertThat(Crossflow.effectiveness(Double.POSITIVE_INFINITY, 1)).isBetween(1 - 0.033, 1.0);
        assertThat(Crossflow.effectiveness(1e9, 0.75)).isBetween(1 - 2e-5, 1.0);
    }

    @Test
    void theTransferUnitsOfAnEffectivenessGiveItBack() {
        for (double ntu : new double[] {0.01, 0.3, 1, 2.5, 7, 20}) {
            for (double ratio : new double[] {0.1, 0.4, 1}) {
                double effectiveness = Crossflow.effectiveness(ntu, ratio);
                double back = Crossflow.transferUnits(effectiveness, ratio);
                assertThat(Crossflow.effectiveness(back, ratio)).isCloseTo(effectiveness, within(1e-14));
            }
        }
        assertThatThrownBy(() -> Crossflow.transferUnits(1, 0.5)).hasMessageContaining("no exchanger");
    }

    @Test
    void refusesWhatIsNoExchanger() {
        for (double ntu : new double[] {-1e-9, Double.NaN}) {
            assertThatThrownBy(() -> Crossflow.effectiveness(ntu, 0.5)).hasMessageContaining("ntu");
        }
        for (double ratio : new double[] {-1e-9, 1.000001, Double.NaN}) {
            assertThatThrownBy(() -> Crossflow.effectiveness(1, ratio)).hasMessageContaining("[0, 1]");
        }
    }
}

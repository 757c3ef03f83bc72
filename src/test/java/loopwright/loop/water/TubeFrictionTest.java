package loopwright.loop.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TubeFrictionTest {

    /** Validation: roots of the Colebrook–White equation (1939), by Newton in 40-digit decimal arithmetic. */
    @ParameterizedTest(name = "Re {0}, roughness {1}")
    @CsvFileSource(resources = "colebrook-roots.csv", numLinesToSkip = 4)
    void isTheRootOfColebrook(double reynolds, double relRoughness, double root) {
        assertThat(TubeFriction.darcy(reynolds, relRoughness)).isCloseTo(root, within(1e-10));
    }

    /** Validation: Haaland, J. Fluids Eng. 105 (1983) 89–90, an explicit form good to 1.4 % in its range. */
    @ParameterizedTest
    @ValueSource(longs = {71, 72})
    void staysNearHaaland(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            double reynolds = 4000 * Math.pow(250, random.nextDouble());
            double rough = random.nextInt(4) == 0 ? 0 : 0.01 * Math.pow(1e-3, random.nextDouble());
            double root = -1.8 * Math.log10(Math.pow(rough / 3.7, 1.11) + 6.9 / reynolds);
            assertThat(TubeFriction.darcy(reynolds, rough))
                    .as("seed %d Re %s roughness %s", seed, reynolds, rough)
                    .isCloseTo(1 / (root * root), Percentage.withPercentage(1.45));
        }
    }

    /** Property: what comes out fulfils the equation, over the whole chart. */
    @ParameterizedTest
    @ValueSource(longs = {73, 74, 75})
    void fulfilsColebrookEverywhere(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            double reynolds = 4000 * Math.pow(1e8 / 4000, random.nextDouble());
            double rough = random.nextInt(4) == 0 ? 0 : 0.05 * Math.pow(1e-5, random.nextDouble());
            double x = 1 / Math.sqrt(TubeFriction.darcy(reynolds, rough));
            double right = -2 * Math.log10(rough / 3.7 + 2.51 * x / reynolds);
            assertThat(x)
                    .as("seed %d Re %s roughness %s", seed, reynolds, rough)
                    .isCloseTo(right, within(1e-12));
        }
    }

    /** Hagen–Poiseuille: 64/Re, whatever the wall. */
    @ParameterizedTest
    @CsvSource({"500, 0.128", "1000, 0.064", "2000, 0.032", "1, 64", "2300, 0.02782608695652174"})
    void isExactInLaminarFlow(double reynolds, double factor) {
        assertThat(TubeFriction.darcy(reynolds, 0)).isEqualTo(factor);
        assertThat(TubeFriction.darcy(reynolds, 0.05)).isEqualTo(factor);
    }

    /** Property: f·Re², which pressure drop goes with, rises strictly from laminar through the gap to turbulent. */
    @ParameterizedTest
    @ValueSource(longs = {76, 77, 78})
    void pressureDropRisesStrictlyThroughTheGap(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 50; round++) {
            double rough = round == 0 ? 0 : round == 1 ? 0.05 : 0.05 * random.nextDouble() * random.nextDouble();
            double before = 0;
            for (double reynolds = 1500; reynolds < 6000; reynolds *= 1.0001 + 0.002 * random.nextDouble()) {
                double drop = TubeFriction.darcy(reynolds, rough) * reynolds * reynolds;
                assertThat(drop)
                        .as("seed %d roughness %s Re %s", seed, rough, reynolds)
                        .isGreaterThan(before);
                before = drop;
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-4, 1e-2, 0.05})
    void hasNoStepAtTheEndsOfTheGap(double rough) {
        for (double end : new double[] {2300, 4000}) {
            double below = TubeFriction.darcy(Math.nextDown(end), rough);
            assertThat(TubeFriction.darcy(Math.nextUp(end), rough)).isCloseTo(below, within(1e-14));
        }
    }

    @Test
    void refusesWhatIsOffTheChart() {
        for (double reynolds : new double[] {0, -1, 1.1e8, Double.NaN}) {
            assertThatThrownBy(() -> TubeFriction.darcy(reynolds, 0))
                    .hasMessage("reynolds must be in (0, 1e8] but was " + reynolds);
        }
        for (double rough : new double[] {-1e-9, 0.051, Double.NaN}) {
            assertThatThrownBy(() -> TubeFriction.darcy(5000, rough))
                    .hasMessage("relRoughness must be in [0, 0.05] but was " + rough);
        }
    }
}

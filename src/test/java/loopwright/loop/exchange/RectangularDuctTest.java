package loopwright.loop.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation. R. K. Shah, A. L. London, Laminar Flow Forced Convection in Ducts (1978). */
class RectangularDuctTest {

    /**
     * Columns: aspect; friction of eq. 341 in double precision (a finite-volume solution agrees to 1e-5); Nusselt numbers H1 and T of
     * the same finite-volume solution; the polynomials' values.
     */
    @ParameterizedTest(name = "aspect {0}")
    @CsvSource({
        "1, 14.227077, 3.6080, 2.977, 3.6102, 2.9787",
        "0.7, 14.605379, 3.7496, 3.090, 3.7518, 3.0853",
        "0.5, 15.548056, 4.1233, 3.392, 4.1258, 3.3887",
        "0.3333333333333333, 17.089672, 4.7948, 3.957, 4.7984, 3.9495",
        "0.25, 18.232777, 5.3311, 4.440, 5.3327, 4.4353",
        "0.125, 20.584644, 6.4904, 5.594, 6.4922, 5.5958",
        "0.1, 21.168877, 6.7850, 5.908, 6.7879, 5.9110",
        "0.05, 22.477013, 7.4511, 6.642, 7.4552, 6.6459"
    })
    void followsTheExactSolution(
            double aspect, double friction, double evenHeat, double evenWall, double polyHeat, double polyWall) {
        assertThat(RectangularDuct.frictionReynolds(aspect)).isCloseTo(friction, within(1e-6));
        assertThat(RectangularDuct.nusseltEvenHeat(aspect)).isCloseTo(polyHeat, within(6e-5));
        assertThat(RectangularDuct.nusseltEvenHeat(aspect)).isCloseTo(evenHeat, Percentage.withPercentage(0.1));
        assertThat(RectangularDuct.nusseltEvenWall(aspect)).isCloseTo(polyWall, within(6e-5));
        assertThat(RectangularDuct.nusseltEvenWall(aspect)).isCloseTo(evenWall, Percentage.withPercentage(0.2));
    }

    /** Parallel plates: 24, 8.2353 and 7.5407, exact. */
    @Test
    void tendsToParallelPlates() {
        assertThat(RectangularDuct.frictionReynolds(0)).isEqualTo(24);
        assertThat(RectangularDuct.frictionReynolds(1e-9)).isCloseTo(24, within(1e-6));
        assertThat(RectangularDuct.nusseltEvenHeat(0)).isCloseTo(8.2353, within(5e-4));
        assertThat(RectangularDuct.nusseltEvenWall(0)).isCloseTo(7.5407, within(5e-4));
    }

    /** Incropera and DeWitt, Table 8.1 (its 3.73 is 0.6 % off the exact value at aspect 0.7). Columns: long over short side, H, T. */
    @ParameterizedTest
    @CsvSource({"1, 3.61, 2.98", "1.43, 3.73, 3.08", "2, 4.12, 3.39", "3, 4.79, 3.96", "4, 5.33, 4.44", "8, 6.49, 5.60"
    })
    void followsTheTextbookTable(double longOverShort, double evenHeat, double evenWall) {
        double aspect = 1 / longOverShort;
        assertThat(RectangularDuct.nusseltEvenHeat(aspect)).isCloseTo(evenHeat, Percentage.withPercentage(1));
        assertThat(RectangularDuct.nusseltEvenWall(aspect)).isCloseTo(evenWall, Percentage.withPercentage(1));
    }

    @Test
    void refusesAspectsThatAreNone() {
        for (double aspect : new double[] {-0.1, 1.1, Double.NaN}) {
            assertThatThrownBy(() -> RectangularDuct.frictionReynolds(aspect)).hasMessageContaining("[0, 1]");
            assertThatThrownBy(() -> RectangularDuct.nusseltEvenHeat(aspect)).hasMessageContaining("[0, 1]");
            assertThatThrownBy(() -> RectangularDuct.nusseltEvenWall(aspect)).hasMessageContaining("[0, 1]");
        }
    }

    /**
     * Worked by hand from the two published formulas, Re 10000, Pr 5: friction factor (0.79·ln 10000 − 1.64)^−2 = 0.031480; its
     * eighth 0.0039350; Nu = 0.0039350·9000·5/(1 + 12.7·0.062729·(2.924018 − 1)) = 69.91.
     */
    @Test
    void coolantIsTurbulentFromReynolds4000() {
        assertThat(new FlatTube(0.1).nusselt(10_000, 5)).isCloseTo(69.91, Percentage.withPercentage(0.05));
    }

    @Test
    void coolantIsLaminarToReynolds2300AndNeverFallsAfter() {
        FlatTube tube = new FlatTube(0.125);
        assertThat(tube.nusselt(0, 5)).isCloseTo(5.594, Percentage.withPercentage(0.3));
        assertThat(tube.nusselt(2300, 5)).isEqualTo(tube.nusselt(10, 5));
        assertThat(tube.nusselt(3150, 5)).isCloseTo((tube.nusselt(2300, 5) + tube.nusselt(4000, 5)) / 2, within(1e-9));
        for (double prandtl : new double[] {0.7, 5, 40}) {
            double before = 0;
            for (double reynolds = 0; reynolds < 20_000; reynolds += 10) {
                double here = tube.nusselt(reynolds, prandtl);
                assertThat(here).isGreaterThanOrEqualTo(before).isLessThan(before == 0 ? 10 : before + 1);
                before = here;
            }
        }
    }
}

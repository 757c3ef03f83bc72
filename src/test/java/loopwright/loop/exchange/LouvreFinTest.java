package loopwright.loop.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation. Y.-J. Chang, C.-C. Wang, Int. J. Heat Mass Transfer 40 (1997) 533-544, eq. 9; Y.-J. Chang, K.-C. Hsu, Y.-T. Lin,
 * C.-C. Wang, Int. J. Heat Mass Transfer 43 (2000) 2237-2243: the formulas evaluated in double precision elsewhere.
 */
class LouvreFinTest {

    /** Louvres 18°, 1.2 and 9 mm; fin 1.4, 10, 0.1 and 35 mm; tubes 13 and 3 mm. */
    private static final LouvreFin FIRST = new LouvreFin(
            new LouvreFin.Louvre(18, 1.2e-3, 9e-3),
            new LouvreFin.Fin(1.4e-3, 10e-3, 0.1e-3, 35e-3),
            new LouvreFin.Tubes(13e-3, 3e-3));

    /** Louvres 27°, 1.3 and 6.5 mm; fin 1.6, 8, 0.1 and 20 mm; tubes 10 and 2 mm. */
    private static final LouvreFin SECOND = new LouvreFin(
            new LouvreFin.Louvre(27, 1.3e-3, 6.5e-3),
            new LouvreFin.Fin(1.6e-3, 8e-3, 0.1e-3, 20e-3),
            new LouvreFin.Tubes(10e-3, 2e-3));

    /** The branch below Re 150 for the first rows, the one above for the others. */
    @ParameterizedTest(name = "Re {0}")
    @CsvSource({
        "100, 0.0377756, 0.230598",
        "140, 0.0320338, 0.173191",
        "150, 0.0309690, 0.222392",
        "200, 0.0268972, 0.179588",
        "300, 0.0220507, 0.136161",
        "400, 0.0191515, 0.113561",
        "500, 0.0171679, 0.099386",
        "1000, 0.0122239, 0.068052",
        "2000, 0.0087038, 0.048699"
    })
    void firstFinFollowsThePublishedFormulas(double reynolds, double j, double f) {
        follows(FIRST, reynolds, j, f);
    }

    @ParameterizedTest(name = "Re {0}")
    @CsvSource({
        "100, 0.0443830, 0.226330",
        "200, 0.0316018, 0.131350",
        "300, 0.0259076, 0.101483",
        "500, 0.0201707, 0.075854",
        "1000, 0.0143621, 0.053640"
    })
    void secondFinFollowsThePublishedFormulas(double reynolds, double j, double f) {
        follows(SECOND, reynolds, j, f);
    }

    private static void follows(LouvreFin fin, double reynolds, double j, double f) {
        double branch = reynolds < 150 ? fin.frictionLow(reynolds) : fin.frictionHigh(reynolds);
        assertThat(fin.colburnJ(reynolds)).isCloseTo(j, within(6e-8));
        assertThat(branch).isCloseTo(f, within(6e-7));
        boolean blended = reynolds > 130 && reynolds < 230;
        if (!blended) {
            assertThat(fin.frictionF(reynolds)).isEqualTo(branch);
        }
    }

    /** The same authors, Int. J. Heat Mass Transfer 49 (2006) 4250-4253 (from memory): w = 1 at 130, 0 at 180, −1 at 230. */
    @Test
    void frictionIsBlendedBetweenTheBranches() {
        for (LouvreFin fin : new LouvreFin[] {FIRST, SECOND}) {
            double low = fin.frictionLow(130);
            double high = fin.frictionHigh(230);

            assertThat(fin.frictionF(130.000001)).isCloseTo(low, Percentage.withPercentage(1e-4));
            assertThat(fin.frictionF(229.999999)).isCloseTo(high, Percentage.withPercentage(1e-4));
            assertThat(fin.frictionF(180)).isCloseTo(Math.sqrt((low * low + high * high) / 2), within(1e-12));
        }
    }

    /** At the laminar end the low branch falls as 1/Re: value and slope go on; far below, f·Re is one number. */
    @Test
    void frictionIsLaminarBelowItsRange() {
        double end = FIRST.laminarEnd();
        double constant = FIRST.frictionF(end) * end;

        assertThat(end).isBetween(30.0, 100.0);
        assertThat(FIRST.frictionF(end * 1.001) * end * 1.001).isCloseTo(constant, Percentage.withPercentage(1e-3));
        for (double reynolds : new double[] {1e-6, 1, 2, 10, end}) {
            assertThat(FIRST.frictionF(reynolds) * reynolds).isCloseTo(constant, Percentage.withPercentage(1e-9));
        }
    }

    /** h goes as j·Re. */
    @Test
    void transferStaysBelowItsRange() {
        double at30 = FIRST.colburnJ(30) * 30;

        assertThat(FIRST.colburnJ(0.01) * 0.01).isCloseTo(at30, Percentage.withPercentage(1e-9));
        assertThat(FIRST.colburnJ(31) * 31).isGreaterThan(at30);
    }

    @Test
    void frictionTimesReynoldsNeverFallsForAnyFin() {
        Random random = new Random(41);
        for (int i = 0; i < 500; i++) {
            LouvreFin fin = anyFin(random);
            CoreFriction friction = new CoreFriction(fin);
            double before = friction.frictionReynolds(0);
            for (double reynolds = 1; reynolds < 2000; reynolds *= 1.01) {
                double here = friction.frictionReynolds(reynolds);
                assertThat(here).as("seed 41, %s at Re %s", fin, reynolds).isGreaterThanOrEqualTo(before * (1 - 1e-12));
                assertThat(here).isGreaterThanOrEqualTo(fin.frictionF(reynolds) * reynolds * (1 - 1e-12));
                before = here;
            }
        }
    }

    /** Where the branches lie close together nothing has to be lifted: the published blend it is. */
    @Test
    void frictionIsThePublishedWhereThatRises() {
        CoreFriction friction = new CoreFriction(FIRST);
        for (double reynolds = 1; reynolds < 5000; reynolds *= 1.05) {
            assertThat(friction.frictionReynolds(reynolds))
                    .isCloseTo(FIRST.frictionF(reynolds) * reynolds, Percentage.withPercentage(1e-9));
        }
    }

    private static LouvreFin anyFin(Random random) {
        double heightM = between(random, 5e-3, 12e-3);
        double tubeM = between(random, 1.5e-3, 3e-3);
        return new LouvreFin(
                new LouvreFin.Louvre(between(random, 10, 30), between(random, 0.8e-3, 1.8e-3), 0.8 * heightM),
                new LouvreFin.Fin(
                        between(random, 1e-3, 2.6e-3),
                        heightM,
                        between(random, 0.04e-3, 0.12e-3),
                        between(random, 10e-3, 70e-3)),
                new LouvreFin.Tubes(heightM + tubeM, tubeM));
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    @Test
    void refusesWhatIsNoFin() {
        assertThatThrownBy(() -> FIRST.colburnJ(0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> FIRST.frictionF(Double.NaN)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new LouvreFin(new LouvreFin.Louvre(90, 1e-3, 8e-3), FIRST.fin(), FIRST.tubes()))
                .hasMessageContaining("no louvred fin");
        // The tubes' depth in place of their thickness.
        assertThatThrownBy(() -> new LouvreFin(FIRST.louvre(), FIRST.fin(), new LouvreFin.Tubes(13e-3, 35e-3)))
                .hasMessageContaining("no louvred fin");
    }

    /** tanh(x)/x; the last row: h 60, k 200, t 0.1 mm, 4 mm. */
    @ParameterizedTest
    @CsvSource({
        "0, 1",
        "0.25, 0.979675",
        "0.5, 0.924234",
        "1, 0.761594",
        "1.5, 0.603432",
        "2, 0.482014",
        "0.309838668, 0.969183"
    })
    void straightFinsLoseTowardsTheTip(double mL, double efficiency) {
        assertThat(FinEfficiency.straight(mL)).isCloseTo(efficiency, within(6e-7));
    }

    @Test
    void shortFinsJoinTheSeries() {
        assertThat(FinEfficiency.straight(0.9999e-4)).isCloseTo(FinEfficiency.straight(1.0001e-4), within(1e-11));
        assertThatThrownBy(() -> FinEfficiency.straight(-1)).hasMessageContaining("at least 0");
    }
}

package loopwright.loop.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation. Idelchik, Handbook of Hydraulic Resistance, 3rd ed. (1994), diagram 4-14: values recomputed from the formula in
 * double precision. Blevins, Applied Fluid Dynamics Handbook: tabulated square-edged screens.
 */
class ThinPlateTest {

    @ParameterizedTest(name = "open {0}")
    @CsvSource({
        "0.1, 249.5171, 250",
        "0.2, 52.5804, 52",
        "0.3, 19.3157, 17",
        "0.4, 8.7579, 7.7",
        "0.5, 4.3695, 3.8",
        "0.6, 2.2570, 2.0",
        "0.7, 1.1484, 1.1",
        "0.8, 0.5377, 0.53"
    })
    void followsIdelchikAndStaysNearBlevins(double openShare, double idelchik, double blevins) {
        double loss = ThinPlate.lossCoefficient(openShare);

        assertThat(loss).isCloseTo(idelchik, within(1e-4));
        assertThat(loss).isCloseTo(blevins, Percentage.withPercentage(16));
    }

    @Test
    void nothingInTheWayLosesNothing() {
        assertThat(ThinPlate.lossCoefficient(1)).isZero();
    }

    @Test
    void moreOpenNeverLosesMore() {
        double before = Double.POSITIVE_INFINITY;
        for (int i = 1; i <= 1000; i++) {
            double loss = ThinPlate.lossCoefficient(i / 1000.0);
            assertThat(loss).isLessThan(before);
            before = loss;
        }
    }

    /**
     * ζ = 30/(f²·Re) with the speed in the holes, "Pressure drop coefficients for thin perforated plates", Electronics Cooling,
     * May 1998; worked by hand.
     */
    @ParameterizedTest(name = "open {0}, Re {1}: {2}")
    @CsvSource({"0.5, 5, 24", "0.4, 8, 23.4375"})
    void slowAirLosesWhatIsPublished(double openShare, double reynolds, double expected) {
        double densityKgPerM3 = 1.184;
        double viscosityPaS = 1.84e-5;
        double holeM = 0.9e-3;
        double faceMPerS = openShare * reynolds * viscosityPaS / (densityKgPerM3 * holeM);

        double lossPa = ThinPlate.slowLossPaSPerM(openShare, holeM, viscosityPaS) * faceMPerS;

        assertThat(lossPa / (densityKgPerM3 * faceMPerS * faceMPerS / 2)).isCloseTo(expected, within(1e-9));
    }

    @Test
    void refusesHolesThatAreNone() {
        assertThatThrownBy(() -> ThinPlate.slowLossPaSPerM(0.5, 0, 1.8e-5)).hasMessageContaining("hole width 0.0 m");
        assertThatThrownBy(() -> ThinPlate.slowLossPaSPerM(0, 1e-3, 1.8e-5)).hasMessageContaining("open share 0.0");
        assertThatThrownBy(() -> ThinPlate.slowLossPaSPerM(0.5, Double.NaN, 1.8e-5))
                .hasMessageContaining("NaN");
    }

    @Test
    void refusesSharesThatAreNone() {
        for (double share : new double[] {0, -0.1, 1.01, Double.NaN}) {
            assertThatThrownBy(() -> ThinPlate.lossCoefficient(share)).hasMessageContaining("(0, 1]");
        }
    }
}

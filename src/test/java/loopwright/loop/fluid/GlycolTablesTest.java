package loopwright.loop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of glycol and water: two publications, one by mass and one by volume. */
class GlycolTablesTest {

    /** What a table's rows give. */
    enum Property {
        DENSITY,
        HEAT_CAPACITY,
        CONDUCTIVITY,
        VISCOSITY;

        /** In the table's unit. */
        double of(Liquid liquid, double temperatureC) {
            return switch (this) {
                case DENSITY -> liquid.densityKgPerM3(temperatureC);
                case HEAT_CAPACITY -> liquid.heatCapacityJPerKgK(temperatureC);
                case CONDUCTIVITY -> liquid.conductivityWPerMK(temperatureC);
                case VISCOSITY -> 1000 * liquid.viscosityPaS(temperatureC);
            };
        }
    }

    /** Melinder (2010), to half a unit of the last printed digit. */
    @ParameterizedTest(name = "{0}, {1} % by mass, {2} °C")
    @CsvFileSource(resources = "/fluid/glycol-by-mass.csv")
    void meetsMelinder(
            Glycol glycol,
            double massPercent,
            double temperatureC,
            double densityKgPerM3,
            double heatCapacityJPerKgK,
            double conductivityWPerMK,
            double viscosityMPaS,
            double prandtl) {
        Liquid liquid = new GlycolWater(glycol, massPercent / 100);
        assertThat(Property.DENSITY.of(liquid, temperatureC)).isCloseTo(densityKgPerM3, printed(1e-3));
        assertThat(Property.HEAT_CAPACITY.of(liquid, temperatureC)).isCloseTo(heatCapacityJPerKgK, printed(1e-2));
        assertThat(Property.CONDUCTIVITY.of(liquid, temperatureC)).isCloseTo(conductivityWPerMK, printed(1e-5));
        assertThat(Property.VISCOSITY.of(liquid, temperatureC)).isCloseTo(viscosityMPaS, printed(1e-4));
        assertThat(liquid.prandtl(temperatureC)).isCloseTo(prandtl, within(2e-3));
    }

    /** Melinder (2010), to half a unit of the last printed digit. */
    @ParameterizedTest(name = "{0}, {1} % by mass")
    @CsvFileSource(resources = "/fluid/glycol-freezing.csv")
    void freezesWhereMelinderSays(Glycol glycol, double massPercent, double freezingC) {
        assertThat(new GlycolWater(glycol, massPercent / 100).freezingC()).isCloseTo(freezingC, printed(1e-2));
    }

    /** ASHRAE Handbook—Fundamentals, secondary coolants; two publications of freezing points differ by up to 1.6 K. */
    @ParameterizedTest(name = "{0}, {1} % by volume")
    @CsvSource({"PROPYLENE, 24.4, -9.6", "PROPYLENE, 39.6, -21.1", "ETHYLENE, 22.9, -10.7", "ETHYLENE, 37.5, -22.3"})
    void freezesNearWhatAshraeSays(Glycol glycol, double volumePercent, double freezingC) {
        assertThat(GlycolWater.ofVolume(glycol, volumePercent / 100).freezingC())
                .isCloseTo(freezingC, within(1.6));
    }

    /** ASHRAE Handbook—Fundamentals, secondary coolants, by volume; the tolerance stands in the row (see the header). */
    @ParameterizedTest(name = "{0} {1}, {3} % by volume, {2} °C")
    @CsvFileSource(resources = "/fluid/glycol-by-volume.csv")
    void agreesWithAshraeByVolume(
            Glycol glycol,
            Property property,
            double temperatureC,
            double volumePercent,
            double expected,
            double spreadPercent) {
        Liquid liquid = GlycolWater.ofVolume(glycol, volumePercent / 100);
        assertThat(property.of(liquid, temperatureC)).isCloseTo(expected, Percentage.withPercentage(spreadPercent));
    }

    /** Half a unit of the last printed digit, and a little for the four-digit coefficients. */
    private static Offset<Double> printed(double lastDigit) {
        return within(0.55 * lastDigit);
    }
}

package loopwright.loop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.util.stream.DoubleStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Water between the rows of its table, against an independent implementation of IAPWS R7-97(2012) and R12-08.
 *
 * <p>That library's conductivity is the older equation for industrial use (revised 1998), not R15-11: at 10 °C it lies 0.55 %
 * above. Hence 1 % there.
 */
class WaterAgainstIf97Test {

    private static final double PRESSURE_PA = 1e5;
    private static final IF97 ORACLE = new IF97(IF97.UnitSystem.SI);
    private static final Water WATER = new Water();

    /** 10.5, 11.5 … 69.5 °C: none is a row of the table. */
    static DoubleStream betweenTheRows() {
        return DoubleStream.iterate(10.5, t -> t < 70, t -> t + 1);
    }

    @ParameterizedTest(name = "{0} °C")
    @MethodSource("betweenTheRows")
    void meetsTheOracleBetweenTheRows(double temperatureC) throws OutOfRangeException {
        assertMeets(temperatureC, 1);
    }

    /** 1, 3 … 9 and 71 … 99 °C, outside the stated range. */
    static DoubleStream outsideTheStatedRange() {
        return DoubleStream.concat(
                DoubleStream.iterate(1, t -> t < 10, t -> t + 2), DoubleStream.iterate(71, t -> t < 99.5, t -> t + 2));
    }

    /** The same tolerances still hold, but for the oracle's own conductivity, which strays further towards 0 °C. */
    @ParameterizedTest(name = "{0} °C")
    @MethodSource("outsideTheStatedRange")
    void staysNearTheOracleOutsideItsRange(double temperatureC) throws OutOfRangeException {
        assertMeets(temperatureC, 1.2);
    }

    /** The oracle itself: IAPWS R7-97(2012) Table 5 (300 K; 3 and 80 MPa) and R12-08 Table 4, to the last printed digits. */
    @Test
    void theOracleMeetsItsCheckPoints() throws OutOfRangeException {
        assertThat(ORACLE.specificVolumePT(3e6, 300)).isCloseTo(0.100215168e-2, within(1e-11));
        assertThat(ORACLE.specificVolumePT(80e6, 300)).isCloseTo(0.971180894e-3, within(1e-12));
        assertThat(ORACLE.specificVolumePT(3e6, 500)).isCloseTo(0.120241800e-2, within(1e-11));
        assertThat(ORACLE.isobaricHeatCapacityPT(3e6, 300)).isCloseTo(4173.01218, within(1e-5));
        assertThat(ORACLE.isobaricHeatCapacityPT(80e6, 300)).isCloseTo(4010.08987, within(1e-5));
        assertThat(ORACLE.isobaricHeatCapacityPT(3e6, 500)).isCloseTo(4655.80682, within(1e-5));
        assertThat(ORACLE.dynamicViscosityRhoT(998, 298.15)).isCloseTo(889.735100e-6, within(1e-12));
        assertThat(ORACLE.dynamicViscosityRhoT(1200, 298.15)).isCloseTo(1437.649467e-6, within(1e-12));
        assertThat(ORACLE.dynamicViscosityRhoT(1000, 373.15)).isCloseTo(307.883622e-6, within(1e-12));
        assertThat(ORACLE.dynamicViscosityRhoT(1000, 433.15)).isCloseTo(217.685358e-6, within(1e-12));
    }

    private static void assertMeets(double temperatureC, double conductivityPercent) throws OutOfRangeException {
        double temperatureK = temperatureC + 273.15;
        assertNear(WATER.densityKgPerM3(temperatureC), ORACLE.densityPT(PRESSURE_PA, temperatureK), 0.05);
        assertNear(
                WATER.heatCapacityJPerKgK(temperatureC), ORACLE.isobaricHeatCapacityPT(PRESSURE_PA, temperatureK), 0.1);
        assertNear(WATER.viscosityPaS(temperatureC), ORACLE.dynamicViscosityPT(PRESSURE_PA, temperatureK), 0.5);
        assertNear(
                WATER.conductivityWPerMK(temperatureC),
                ORACLE.thermalConductivityPT(PRESSURE_PA, temperatureK),
                conductivityPercent);
    }

    private static void assertNear(double actual, double expected, double percent) {
        assertThat(actual).isCloseTo(expected, Percentage.withPercentage(percent));
    }
}

package loopwright.loop.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import loopwright.catalog.part.Radiator;
import loopwright.loop.fluid.Air;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tabulated core: near its formulas, rising from 0, the same drag for like flow. */
class CoreInAirTest {

    /** What the class states of its table; a node more or less must not break it. */
    private static final double TABLE_ACCURACY = 2e-4;

    static Stream<Radiator> everyRadiatorOfTheDemo() {
        return SampleCores.DEMO.all(Radiator.class).stream();
    }

    @ParameterizedTest
    @MethodSource("everyRadiatorOfTheDemo")
    void theTableIsNearTheFormulasAndTheLossRisesStrictly(Radiator radiator) {
        RadiatorCore core = SampleCores.core(radiator);
        for (AirProperties air : List.of(SampleCores.AIR, SampleCores.THIN_AIR)) {
            CoreInAir table = core.in(air);
            AirLoss loss = core.loss(air);
            AirSide side = core.airSide(air);
            double lossBefore = -1;
            double sideBefore = 0;
            for (double speed = 0; speed < CoreInAir.FACE_SPEED_MAX_M_PER_S + 1; speed += 0.003) {
                double lossPa = table.lossPa(speed);
                double sideWPerK = table.airSideWPerK(speed);
                assertThat(lossPa).as("%s at %s m/s", radiator.id(), speed).isGreaterThan(lossBefore);
                assertThat(sideWPerK).isGreaterThanOrEqualTo(sideBefore);
                if (speed <= CoreInAir.FACE_SPEED_MAX_M_PER_S) {
                    near(radiator, speed, lossPa, loss.lossPa(speed));
                    near(radiator, speed, sideWPerK, side.conductanceWPerK(speed));
                }
                lossBefore = lossPa;
                sideBefore = sideWPerK;
            }
        }
    }

    private static void near(Radiator radiator, double speed, double table, double formula) {
        assertThat(table).as("%s at %s m/s", radiator.id(), speed).isCloseTo(formula, within(TABLE_ACCURACY * formula));
    }

    @Test
    void theLossIsLinearForSmallFlows() {
        CoreInAir core =
                SampleCores.core(SampleCores.radiator("1x120", 20, 16, 1)).in(SampleCores.AIR);

        assertThat(core.lossPa(0)).isZero();
        double slope = core.lossPa(0.001) / 0.001;
        assertThat(core.lossPa(0.004) / 0.004).isCloseTo(slope, Percentage.withPercentage(0.5));
        assertThat(core.lossPa(0.02) / 0.02).isCloseTo(slope, Percentage.withPercentage(2));
    }

    /** Kays and London, Compact Heat Exchangers, eq. 2-26 without change of density, worked by hand for one core. */
    @Test
    void theLossIsEntranceFrictionAndExit() {
        Radiator radiator = SampleCores.with(
                "1x120",
                new Radiator.Core(
                        20,
                        16,
                        1,
                        120,
                        List.of(),
                        Optional.of(new Radiator.Fins(1.2, 18, 7, 9, 0.1, 200)),
                        Optional.of(new Radiator.Tubes(2, 0.2, 2)),
                        Radiator.Measured.NOTHING));
        LouvreFin fin = new LouvreFin(
                new LouvreFin.Louvre(18, 1.2e-3, 7e-3),
                new LouvreFin.Fin(1.5875e-3, 9e-3, 0.1e-3, 20e-3),
                new LouvreFin.Tubes(11e-3, 2e-3));
        double free = 9.0 / 11 * 1.4875 / 1.5875;
        double speed = 1.2 / free;
        double reynolds = speed * 1.2e-3 * 1.18391 / 1.8372e-5;
        // Wetted over free section of one cell: 2·(9 + 1.4875)·20 mm² over 9·1.4875 mm².
        double walls = 2 * (9 + 1.4875) * 20 / (9 * 1.4875);
        double ends = 0.5 * Math.pow(1 - free, 0.75) + (1 - free) * (1 - free);
        double expected = 0.5 * 1.18391 * speed * speed * (ends + fin.frictionF(reynolds) * walls);

        assertThat(reynolds).isBetween(100.0, 130.0);
        assertThat(SampleCores.core(radiator).in(SampleCores.AIR).lossPa(1.2))
                .isCloseTo(expected, Percentage.withPercentage(0.02));
    }

    @Test
    void moreFinsResistAndConductMore() {
        double lossBefore = 0;
        double sideBefore = 0;
        for (double finsPerInch : new double[] {8, 10, 12, 14, 16, 18, 20, 22}) {
            CoreInAir core = SampleCores.core(SampleCores.radiator("1x120", 20, finsPerInch, 1))
                    .in(SampleCores.AIR);
            assertThat(core.lossPa(1)).isGreaterThan(lossBefore);
            assertThat(core.airSideWPerK(1)).isGreaterThan(sideBefore);
            lossBefore = core.lossPa(1);
            sideBefore = core.airSideWPerK(1);
        }
    }

    @Test
    void sectionsAddUp() {
        CoreInAir one =
                SampleCores.core(SampleCores.radiator("1x120", 33, 13, 2)).in(SampleCores.AIR);
        CoreInAir three =
                SampleCores.core(SampleCores.radiator("3x120", 33, 13, 2)).in(SampleCores.AIR);

        assertThat(three.airSideWPerK(1.3)).isCloseTo(3 * one.airSideWPerK(1.3), Percentage.withPercentage(1e-9));
        assertThat(three.lossPa(1.3)).isCloseTo(one.lossPa(1.3), Percentage.withPercentage(1e-9));
    }

    /** 1x120, 0.0132 m²: 47.52 m³/h is 1 m/s. */
    @Test
    void measuredLossReplacesTheCorrelation() {
        Radiator radiator = SampleCores.measured(
                "1x120",
                new Radiator.Measured(
                        List.of(),
                        List.of(
                                new Radiator.AirLossPoint(23.76, 4),
                                new Radiator.AirLossPoint(47.52, 10),
                                new Radiator.AirLossPoint(95.04, 30))));
        CoreInAir core = SampleCores.core(radiator).in(SampleCores.AIR);

        assertThat(core.lossPa(0.25)).isCloseTo(2, Percentage.withPercentage(0.02));
        assertThat(core.lossPa(0.5)).isCloseTo(4, Percentage.withPercentage(1e-6));
        assertThat(core.lossPa(1)).isCloseTo(10, Percentage.withPercentage(1e-6));
        assertThat(core.lossPa(2)).isCloseTo(30, Percentage.withPercentage(1e-6));
        // The last two points rise threefold for a doubled speed, and so on.
        assertThat(core.lossPa(4)).isCloseTo(90, Percentage.withPercentage(0.05));
    }

    /** Like flow: twice the viscosity at the same density has twice the speed at the same Re, and four times the loss there. */
    @Test
    void measuredLossGoesWithTheReynoldsNumber() {
        Radiator radiator = SampleCores.measured(
                "1x120",
                new Radiator.Measured(
                        List.of(), List.of(new Radiator.AirLossPoint(40, 8), new Radiator.AirLossPoint(80, 22))));
        RadiatorCore core = SampleCores.core(radiator);
        AirProperties thick = new AirProperties(1.18391, 2 * 1.8372e-5, 0.02611, 1006);

        assertThat(core.loss(thick).lossPa(2.4))
                .isCloseTo(4 * core.loss(SampleCores.AIR).lossPa(1.2), Percentage.withPercentage(1e-9));
    }

    @Test
    void anyMeasuredLossRisesStrictly() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            double flow = 10 + 20 * random.nextDouble();
            double loss = 1 + 4 * random.nextDouble();
            Radiator.AirLossPoint a = new Radiator.AirLossPoint(flow, loss);
            Radiator.AirLossPoint b = new Radiator.AirLossPoint(
                    flow * (1.1 + random.nextDouble()), loss * (1.01 + 4 * random.nextDouble()));
            CoreInAir core = SampleCores.core(
                            SampleCores.measured("1x120", new Radiator.Measured(List.of(), List.of(a, b))))
                    .in(SampleCores.AIR);
            double before = -1;
            for (double speed = 0; speed < 9; speed += 0.01) {
                assertThat(core.lossPa(speed))
                        .as("seed 7, case %s, %s m/s", i, speed)
                        .isGreaterThan(before);
                before = core.lossPa(speed);
            }
        }
    }

    /** Air of 25 °C at sea level, once by its properties and once as a state. */
    @Test
    void takesAStateOfAir() {
        RadiatorCore core = SampleCores.core(SampleCores.radiator("1x120", 20, 16, 1));
        CoreInAir byState = core.in(Air.at(25, 0));

        assertThat(byState.lossPa(1)).isCloseTo(core.in(SampleCores.AIR).lossPa(1), Percentage.withPercentage(0.1));
        assertThat(byState.airSideWPerK(1))
                .isCloseTo(core.in(SampleCores.AIR).airSideWPerK(1), Percentage.withPercentage(0.1));
    }

    @Test
    void refusesSpeedsAndAirThatAreNone() {
        RadiatorCore core = SampleCores.core(SampleCores.radiator("1x120", 20, 16, 1));
        CoreInAir air = core.in(SampleCores.AIR);

        assertThatThrownBy(() -> air.lossPa(-0.1)).hasMessageContaining("at least 0");
        assertThatThrownBy(() -> air.airSideWPerK(Double.NaN)).hasMessageContaining("at least 0");
        assertThatThrownBy(() -> core.in(0, 1.8e-5, 0.026, 1006)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> core.in(1.2, Double.NaN, 0.026, 1006)).hasMessageContaining("above 0");
    }
}

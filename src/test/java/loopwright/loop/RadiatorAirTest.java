package loopwright.loop;

import static loopwright.loop.SampleParts.PRESSURE_120;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RadiatorAirTest {

    private static final Pattern ONE_120 = new Pattern(1, 120);
    private static final Radiator THIRTY = SampleParts.radiator(ONE_120, 20, 16);

    /** Trade practice: heat and air left behind a panel, in percent, 30 class at 1300 rpm. 0.40 and 0.60 are 90 and 97. */
    @ParameterizedTest(name = "open {0}")
    @CsvSource({"0.3, 75, 82", "0.4, 86, 90", "0.5, 92, 94", "0.6, 96, 97", "0.7, 98, 98", "0.8, 99, 99"})
    void aPanelCostsWhatTheTradeSays(double openShare, double airPercent, double heatPercent) {
        FanBank bank = bank(PRESSURE_120, 1, 1300);
        OperatingPoint open = RadiatorAir.operatingPoint(THIRTY, bank, AirPath.OPEN);
        OperatingPoint behind = RadiatorAir.operatingPoint(THIRTY, bank, AirPath.ofPanel(openShare));

        assertThat(100 * behind.airflowM3PerH() / open.airflowM3PerH()).isCloseTo(airPercent, within(1.0));
        assertThat(100 * behind.conductanceWPerK() / open.conductanceWPerK()).isCloseTo(heatPercent, within(1.0));
    }

    @Test
    void theFansPressureIsWhatCoreAndPanelTake() {
        AirPath path = AirPath.ofPanel(0.5);
        OperatingPoint point = RadiatorAir.operatingPoint(THIRTY, bank(PRESSURE_120, 2, 1500), path);

        // t·(FPI/12)^1.5·(0.22·v + 0.16·v²) + ζ(0.5)·0.6·v², face of a 120 section 0.0132 m².
        double v = point.airflowM3PerH() / 3600 / 0.0132;
        double takenPa = 20 * Math.pow(16 / 12.0, 1.5) * (0.22 * v + 0.16 * v * v) + 4.3695 * 0.6 * v * v;
        assertThat(point.pressurePa()).isCloseTo(takenPa, within(1e-3));
    }

    @Test
    void aSolidPanelStopsEverything() {
        OperatingPoint point =
                RadiatorAir.operatingPoint(THIRTY, new FanBank(PRESSURE_120, 1, Duty.FULL), AirPath.ofPanel(0));

        assertThat(point).isEqualTo(new OperatingPoint(0, 28.3, 0));
        OperatingPoint almost =
                RadiatorAir.operatingPoint(THIRTY, new FanBank(PRESSURE_120, 1, Duty.FULL), AirPath.ofPanel(1e-6));
        assertThat(almost.airflowM3PerH()).isBetween(0.0, 0.01);
    }

    @Test
    void refusesFansOfAnotherSizeAndCurvesThatDoNotEnd() {
        FanBank large = new FanBank(SampleParts.fan(140, 1500, 148, 19.5), 1, Duty.FULL);
        assertThatThrownBy(() -> RadiatorAir.operatingPoint(THIRTY, large, AirPath.OPEN))
                .hasMessage("fan fan-140 is 140 mm but radiator radiator takes 1x120");
        assertThatThrownBy(() -> new FanBank(PRESSURE_120, 3, Duty.FULL)).hasMessageContaining("1 or 2");
        FanBank still = new FanBank(SampleParts.fan(120, 1500, 100, 0), 1, Duty.FULL);
        assertThatThrownBy(() -> RadiatorAir.operatingPoint(THIRTY, still, AirPath.OPEN))
                .hasMessageContaining("to 0 Pa");
    }

    private static FanBank bank(Fan fan, int layers, double speedRpm) {
        return new FanBank(fan, layers, new Duty(100 * speedRpm / fan.air().speedMaxRpm()));
    }
}

package loopwright.loop.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.loop.Duty;
import loopwright.testing.MachineParts;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FanBankTest {

    private static final double STANDARD_KG_PER_M3 = 1.2;

    private static final Fan FAN = MachineParts.fan("fan", 120, 117, 28.3, 10);

    private static FanBank bank(int row, int layers, double percent) {
        return new FanBank(FAN, row, layers, new Duty(percent), STANDARD_KG_PER_M3);
    }

    /** Fan laws, AMCA 201: flow with the speed, pressure with its square, so air power with its cube; computed. */
    @ParameterizedTest
    @CsvSource({
        "50, 100, 2, 4, 8",
        "60, 90, 1.5, 2.25, 3.375",
        "80, 100, 1.25, 1.5625, 1.953125",
        "100, 80, 0.8, 0.64, 0.512",
        "100, 50, 0.5, 0.25, 0.125"
    })
    void followsTheFanLaws(double from, double to, double flowRatio, double pressureRatio, double powerRatio) {
        FanBank slow = bank(1, 1, from);
        FanBank fast = bank(1, 1, to);
        double flow = 0.4 * slow.freeFlowM3PerS();
        double pressure = slow.pressurePa(flow);

        assertThat(fast.freeFlowM3PerS() / slow.freeFlowM3PerS()).isCloseTo(flowRatio, within(1e-12));
        assertThat(fast.pressurePa(flow * flowRatio) / pressure).isCloseTo(pressureRatio, within(1e-12));
        assertThat(fast.shutOffPa() / slow.shutOffPa()).isCloseTo(pressureRatio, within(1e-12));
        assertThat(flow * flowRatio * fast.pressurePa(flow * flowRatio) / (flow * pressure))
                .isCloseTo(powerRatio, within(1e-12));
    }

    /** Fan laws: pressure with the density, flow not at all. */
    @Test
    void thinAirIsMovedWithLessPressure() {
        FanBank thin = new FanBank(FAN, 2, 1, Duty.FULL, 0.9);
        double flow = 0.03;

        assertThat(thin.pressurePa(flow) / bank(2, 1, 100).pressurePa(flow)).isCloseTo(0.75, within(1e-12));
        assertThat(thin.freeFlowM3PerS()).isEqualTo(bank(2, 1, 100).freeFlowM3PerS());
    }

    @Test
    void inTheSheetsAirItKeepsTheSheet() {
        assertThat(bank(1, 1, 100).shutOffPa()).isCloseTo(28.3, within(1e-12));
        assertThat(bank(1, 1, 100).freeFlowM3PerS() * 3600).isCloseTo(117, within(1e-9));
        // 28.3·(1 − 0.5^1.5), a point of the curve
        assertThat(bank(1, 1, 100).pressurePa(117.0 / 2 / 3600)).isCloseTo(18.2945, within(1e-4));
    }

    /** In series pressures add at equal flow; side by side flows add at equal pressure. */
    @Test
    void layersAddPressureAndARowAddsFlow() {
        double flow = 0.02;
        assertThat(bank(1, 2, 100).pressurePa(flow))
                .isEqualTo(2 * bank(1, 1, 100).pressurePa(flow));
        assertThat(bank(3, 1, 100).pressurePa(3 * flow))
                .isCloseTo(bank(1, 1, 100).pressurePa(flow), within(1e-12));
    }

    /**
     * Closed check, by hand: machines with H = 10 − 0.5·Q² on a system of 0.25·Q². One 3.6514837 at 3.3333333; two side by
     * side 5.1639778 at 6.6666667; two in series 4 at 4.
     */
    @ParameterizedTest
    @CsvSource({"1, 1, 3.6514837, 3.3333333", "2, 1, 5.1639778, 6.6666667", "1, 2, 4, 4"})
    void findsTheClosedOperatingPoints(int row, int layers, double flowM3PerS, double pressurePa) {
        List<Fan.CurvePoint> curve = new ArrayList<>();
        double free = Math.sqrt(20);
        for (int i = 0; i <= 200; i++) {
            double flow = free * i / 200;
            curve.add(new Fan.CurvePoint(flow * 3600, i == 200 ? 0 : 10 - 0.5 * flow * flow));
        }
        FanBank bank = new FanBank(MachineParts.fan("parabola", 120, 10, curve), row, layers, Duty.FULL, 1.2);
        AirResistance system = new AirResistance(0, 0.25);
        AirBranch branch = new AirBranch("check", AirDirection.IN, bank, new AirBranch.Way(system, Optional.empty()));

        double found = branch.coreFlowM3PerS(0, 0);

        assertThat(found).isCloseTo(flowM3PerS, Percentage.withPercentage(0.01));
        assertThat(system.lossPa(found)).isCloseTo(pressurePa, Percentage.withPercentage(0.02));
    }

    /** Property: at any flow, also where other fans drive the air through, a slower row gives no more pressure. */
    @ParameterizedTest
    @CsvSource({"1, 1", "3, 1", "2, 2"})
    void slowerNeverPushesMoreNorResistsLess(int row, int layers) {
        double free = bank(row, layers, 100).freeFlowM3PerS();
        for (int i = 0; i <= 200; i++) {
            double flow = 5 * free * i / 200;
            for (int duty = 15; duty <= 100; duty += 5) {
                assertThat(bank(row, layers, duty - 5).pressurePa(flow))
                        .as("flow %s, duty %s to %s", flow, duty, duty - 5)
                        .isLessThanOrEqualTo(bank(row, layers, duty).pressurePa(flow) + 1e-12);
            }
        }
    }

    /** Property: the pressure falls all the way, and the slope is the slope. */
    @Test
    void fallsStrictlyAlsoBeyondTheFreeFlow() {
        FanBank bank = bank(2, 1, 70);
        double free = bank.freeFlowM3PerS();
        double h = free * 1e-7;
        for (int i = 1; i <= 300; i++) {
            double flow = free * i / 99.5;
            double before = bank.pressurePa(flow - h);
            double after = bank.pressurePa(flow + h);
            assertThat(after).as("flow %s", flow).isLessThan(before);
            assertThat(bank.slopePaSPerM3(flow))
                    .as("flow %s", flow)
                    .isCloseTo((after - before) / (2 * h), Percentage.withPercentage(0.1));
        }
    }

    /** Property: what it says no flow can exceed does hold: there the curve is at or below minus the help. */
    @Test
    void noFlowGetsBeyondItsReach() {
        Fan flat = MachineParts.fan(
                "flat",
                120,
                10,
                List.of(new Fan.CurvePoint(0, 20), new Fan.CurvePoint(50, 0), new Fan.CurvePoint(90, 0)));
        for (FanBank bank : List.of(bank(2, 2, 40), new FanBank(flat, 3, 1, new Duty(70), 1.1))) {
            for (double help : new double[] {0, 1, 30, 200, 5000}) {
                double reach = bank.reachM3PerS(help);
                assertThat(reach).isFinite().isGreaterThanOrEqualTo(bank.freeFlowM3PerS());
                assertThat(bank.pressurePa(reach)).isLessThanOrEqualTo(-help + 1e-9 * (1 + help));
            }
        }
    }

    @Test
    void refusesWhatIsNoBank() {
        assertThatThrownBy(() -> bank(0, 1, 100)).hasMessageContaining("0 in 1 of fan");
        assertThatThrownBy(() -> bank(1, 3, 100)).hasMessageContaining("1 or 2 layers");
        assertThatThrownBy(() -> new FanBank(FAN, 1, 1, Duty.FULL, Double.NaN)).hasMessageContaining("density");
    }

    @Test
    void refusesCurvesThatDoNotEndAtNoPressure() {
        List<Fan.CurvePoint> high = List.of(new Fan.CurvePoint(0, 20), new Fan.CurvePoint(100, 1));
        List<Fan.CurvePoint> late = List.of(new Fan.CurvePoint(5, 20), new Fan.CurvePoint(100, 0));
        assertThatThrownBy(() -> new FanCurve(MachineParts.fan("high", 120, 10, high)))
                .hasMessageContaining("fan high")
                .hasMessageContaining("to 0 Pa");
        assertThatThrownBy(() -> new FanCurve(MachineParts.fan("late", 120, 10, late)))
                .hasMessageContaining("from 0 m³/h");
    }
}

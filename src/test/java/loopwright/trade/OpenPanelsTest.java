package loopwright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import loopwright.catalog.basis.Pattern;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.testing.MachineParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source: what the open share of a panel leaves of a 30 mm radiator at 1300 rpm. */
class OpenPanelsTest {

    private static final MachineModel MODEL = new MachineModel(MachineParts.PRACTICE, new Machine.Site(25, 0));

    private static Machine.FanMount front(AirPath path) {
        Pattern fans = Pattern.parse("2x120");
        return new Machine.FanMount(
                "front",
                AirDirection.IN,
                new Machine.Fans(MachineParts.pressureFan(1300), 2, 1, Duty.FULL),
                new Machine.MountAir(path, MachineParts.face(fans)),
                Optional.of(new Machine.RadiatorAt(MachineParts.radiator("2x120", 20, 16, 1), 0, 0)));
    }

    private static double heat(double openShare) {
        return MODEL.ratedConductanceWPerK(front(AirPath.ofPanel(openShare)))
                / MODEL.ratedConductanceWPerK(front(AirPath.OPEN));
    }

    private static double air(double openShare) {
        return MODEL.branch(front(AirPath.ofPanel(openShare)), Nudge.NONE).coreFlowM3PerS(0, 0)
                / MODEL.branch(front(AirPath.OPEN), Nudge.NONE).coreFlowM3PerS(0, 0);
    }

    /** The trade's table; its core and its fan's square are others, so within 0.025. */
    @ParameterizedTest(name = "open {0}: air {1}, heat {2}")
    @CsvSource({
        "0.30, 0.75, 0.82",
        "0.40, 0.86, 0.90",
        "0.50, 0.92, 0.94",
        "0.60, 0.96, 0.97",
        "0.70, 0.98, 0.98",
        "0.80, 0.99, 0.99"
    })
    void aPanelLeavesWhatTheTradeSays(double openShare, double air, double heat) {
        assertThat(air(openShare)).isCloseTo(air, within(0.025));
        assertThat(heat(openShare)).isCloseTo(heat, within(0.025));
    }

    /** Worked: at 40 % open 0.90 of the heat, at 60 % 0.97. The difference is what a builder asks for. */
    @Test
    void openingAPanelFromFortyToSixtyBuysSevenPercent() {
        assertThat(heat(0.6) / heat(0.4)).isCloseTo(0.97 / 0.90, within(0.025));
    }

    @Test
    void aFrontThatIsMostlyOpenLeavesNearlyAll() {
        assertThat(heat(0.6)).isGreaterThan(0.95);
    }

    @Test
    void anAllButClosedFrontLeavesLessThanHalf() {
        assertThat(heat(0.1)).isLessThan(0.5);
    }
}

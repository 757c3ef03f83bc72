package loopwright.loop.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import loopwright.loop.Duty;
import loopwright.testing.MachineParts;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** One mount, and a core round which air leaks. */
class AirBranchTest {

    /** A made-up core: 12·v + 5·v² Pa. */
    private static final Core CORE = new Core() {
        @Override
        public double lossPa(double v) {
            return 12 * v + 5 * v * v;
        }

        @Override
        public double slopePaSPerM(double v) {
            return 12 + 10 * v;
        }
    };

    private static final AirResistance PANEL = new AirResistance(20, 5000);

    private static AirBranch branch(AirDirection direction, double leak) {
        FanBank fans = new FanBank(MachineParts.pressureFan(1300), 2, 1, Duty.FULL, 1.15);
        return new AirBranch(
                "front", direction, fans, new AirBranch.Way(PANEL, Optional.of(new CoreFace(CORE, 0.0264, leak))));
    }

    /** Orifice flow, any text: 0.6·A·√(2/ρ) at 1 Pa; 8 cm² in air of 1.2 kg/m³. */
    @Test
    void aGapLeaksAsAnOrifice() {
        assertThat(CoreFace.leakOf(8e-4, 1.2)).isCloseTo(6.19677e-4, within(1e-9));
        CoreFace face = new CoreFace(CORE, 0.0264, CoreFace.leakOf(8e-4, 1.2));
        // core at 1 m/s: 17 Pa, so √17 times the leak at 1 Pa go round it
        assertThat(face.wholeM3PerS(0.0264)).isCloseTo(0.0264 + 6.19677e-4 * Math.sqrt(17), within(1e-8));
        assertThat(face.lossPa(0.0264)).isCloseTo(17, within(1e-12));
    }

    @Test
    void theLeaksSlopeIsASlope() {
        CoreFace face = new CoreFace(CORE, 0.0264, 7e-4);
        double flow = 0.02;
        double h = 1e-8;
        double slope = (face.wholeM3PerS(flow + h) - face.wholeM3PerS(flow - h)) / (2 * h);
        assertThat(face.wholeSlope(flow)).isCloseTo(slope, within(1e-6));
        assertThat(branch(AirDirection.IN, 7e-4).slopeAt(flow))
                .isCloseTo(
                        (branch(AirDirection.IN, 7e-4).at(flow + h)
                                        - branch(AirDirection.IN, 7e-4).at(flow - h))
                                / (2 * h),
                        Percentage.withPercentage(1e-3));
    }

    /** At the flow found, the fans' pressure and the help are what panel and core take, worked out apart. */
    @Test
    void fansAndHelpAreWhatPanelAndCoreTake() {
        for (AirDirection direction : AirDirection.values()) {
            for (double leak : new double[] {0, 7e-4}) {
                for (double inside = -40; inside <= 40; inside += 4) {
                    AirBranch branch = branch(direction, leak);
                    double core = branch.coreFlowM3PerS(inside, 0.01);
                    double help = direction == AirDirection.OUT ? inside : -inside;
                    if (core == 0) {
                        assertThat(help).isLessThan(-branch.fans().shutOffPa() + 1e-9);
                        continue;
                    }
                    double v = core / 0.0264;
                    double corePa = 12 * v + 5 * v * v;
                    double whole = core + leak * Math.sqrt(corePa);
                    assertThat(branch.fans().pressurePa(whole) + help)
                            .as("%s, leak %s, %s Pa inside", direction, leak, inside)
                            .isCloseTo(20 * whole + 5000 * whole * whole + corePa, within(1e-7));
                    assertThat(branch.wholeM3PerS(core)).isCloseTo(whole, within(1e-12));
                }
            }
        }
    }

    @Test
    void fansThatAreHeldAgainstStall() {
        AirBranch in = branch(AirDirection.IN, 0);
        double shutOff = in.fans().shutOffPa();
        assertThat(in.coreFlowM3PerS(shutOff * 1.001, 0.01)).isZero();
        assertThat(in.coreFlowM3PerS(shutOff * 0.999, 0.01)).isPositive();
        assertThat(branch(AirDirection.OUT, 0).coreFlowM3PerS(-shutOff * 1.001, 0.01))
                .isZero();
        assertThat(in.riseM3PerSPerPa(0)).isZero();
    }

    @Test
    void nothingPassesAClosedPanel() {
        FanBank fans = new FanBank(MachineParts.pressureFan(1300), 1, 2, Duty.FULL, 1.15);
        AirBranch shut =
                new AirBranch("shut", AirDirection.IN, fans, new AirBranch.Way(AirResistance.CLOSED, Optional.empty()));
        assertThat(shut.coreFlowM3PerS(-100, 0)).isZero();
    }

    @Test
    void refusesFacesThatAreNone() {
        assertThatThrownBy(() -> new CoreFace(CORE, 0, 0)).hasMessageContaining("above 0 m²");
        assertThatThrownBy(() -> new CoreFace(CORE, 0.01, Double.NaN)).hasMessageContaining("leak");
    }
}

package loopwright.loop.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.loop.air.AirPath.Outlet;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AirPathTest {

    private static final double INFINITY = Double.POSITIVE_INFINITY;

    /** A face of 0.02 m² and 0.6 m round, air of 1.2 kg/m³, holes of 4 mm and 1 mm. */
    private static final AirPath.Face FACE = new AirPath.Face(0.02, 0.6);

    private static final AirPath.Medium MEDIUM = new AirPath.Medium(1.2, 1.8e-5, 4e-3, 1e-3);

    private static AirResistance of(AirPath path) {
        return path.resistance(FACE, MEDIUM);
    }

    private static AirPath behind(double openShare, double depthM) {
        return new AirPath(openShare, Where.FACE, OptionalDouble.empty(), Optional.empty(), depthM);
    }

    private static AirPath covered(Outlet outlet) {
        return new AirPath(1, Where.FACE, OptionalDouble.empty(), Optional.of(outlet), INFINITY);
    }

    /** Idelchik (1994) diagram 4-14: ζ 8.7579 at 40 % and 2.2570 at 60 %, on the face's dynamic pressure 0.6·v². */
    @ParameterizedTest
    @CsvSource({"0.4, 8.7579", "0.6, 2.2570"})
    void aPanelTakesItsCoefficientTimesTheDynamicPressure(double openShare, double zeta) {
        AirResistance panel = of(AirPath.ofPanel(openShare));

        assertThat(panel.quadraticPaS2PerM6()).isCloseTo(zeta * 0.6 / (0.02 * 0.02), Percentage.withPercentage(0.01));
        // 15·µ/(f·d) for each m/s, by hand
        assertThat(panel.linearPaSPerM3()).isCloseTo(15 * 1.8e-5 / (openShare * 4e-3) / 0.02, within(1e-9));
    }

    @Test
    void nothingInTheWayTakesNothing() {
        assertThat(of(AirPath.OPEN)).isEqualTo(AirResistance.NONE);
        assertThat(of(AirPath.ofPanel(0)).isClosed()).isTrue();
        assertThat(of(behind(1, 0)).isClosed()).isTrue();
    }

    /** Orifice flow, any text: q = 0.6·A·√(2Δp/ρ); 10 cm² at 6 Pa of 1.2 kg/m³ let 1.8974 L/s through. */
    @Test
    void aLeakIsAnOrifice() {
        AirResistance leak = AirPath.leak(1e-3, MEDIUM);

        assertThat(leak.flowM3PerS(6)).isCloseTo(0.6e-3 * Math.sqrt(10), within(1e-12));
        assertThat(leak.flowM3PerS(6)).isCloseTo(1.8974e-3, within(1e-7));
        assertThat(AirPath.leak(0, MEDIUM).isClosed()).isTrue();
    }

    /** Through a gap of 20 mm all round (0.012 m²): entry and turn, 0.5 + 1.15 of the speed in it. */
    @Test
    void aNearWallTurnsTheAir() {
        double expected = 1.65 * 0.6 / (0.012 * 0.012);
        assertThat(of(behind(1, 0.02)).quadraticPaS2PerM6()).isCloseTo(expected, within(1e-9));
        assertThat(of(behind(1, 0.02)).linearPaSPerM3()).isZero();
    }

    /** Slots of 0.2·0.02 m² at the edges, an orifice of 0.6, then a turn of 1.15 in the depth outside. */
    @Test
    void edgesAreSlotsAndATurn() {
        AirPath edges = new AirPath(0.2, Where.EDGES, OptionalDouble.empty(), Optional.empty(), 0.03);
        double slots = 0.6 / (0.36 * 0.004 * 0.004);
        double turn = 1.15 * 0.6 / (0.018 * 0.018);
        assertThat(of(edges).quadraticPaS2PerM6()).isCloseTo(slots + turn, Percentage.withPercentage(1e-9));
        AirPath shut = new AirPath(0, Where.EDGES, OptionalDouble.empty(), Optional.empty(), 0.03);
        assertThat(of(shut).isClosed()).isTrue();
    }

    /** A filter's small holes resist slow air four times as much as a panel's that are four times as wide. */
    @Test
    void aFilterIsAPlateOfSmallHoles() {
        AirPath filter = new AirPath(1, Where.FACE, OptionalDouble.of(0.4), Optional.empty(), INFINITY);
        AirResistance panel = of(AirPath.ofPanel(0.4));
        assertThat(of(filter).linearPaSPerM3()).isCloseTo(4 * panel.linearPaSPerM3(), within(1e-9));
        assertThat(of(filter).quadraticPaS2PerM6()).isEqualTo(panel.quadraticPaS2PerM6());
    }

    @Test
    void aCoverLetsAirOutByItsSkinAndItsSides() {
        AirResistance sides = of(covered(new Outlet(0, 0.004, 0.02)));
        AirResistance skin = of(covered(new Outlet(0.4, 0, 0.02)));
        AirResistance both = of(covered(new Outlet(0.4, 0.004, 0.02)));

        // an orifice of 0.6 and a turn of 1.15 in the gap of 20 mm all round
        assertThat(sides.quadraticPaS2PerM6())
                .isCloseTo(0.6 / (0.36 * 0.004 * 0.004) + 1.15 * 0.6 / (0.012 * 0.012), within(1e-6));
        assertThat(skin).isEqualTo(of(AirPath.ofPanel(0.4)));
        assertThat(both.quadraticPaS2PerM6())
                .isLessThan(Math.min(sides.quadraticPaS2PerM6(), skin.quadraticPaS2PerM6()));
        assertThat(of(covered(new Outlet(0, 0, 0.02))).isClosed()).isTrue();
        assertThat(of(covered(new Outlet(1, 0.004, 0.02)))).isEqualTo(AirResistance.NONE);
    }

    /** An empty mount loses the air's speed at either end besides: 0.5 and 1 of the dynamic pressure on the face. */
    @Test
    void anEmptyMountLosesEntryAndExit() {
        double more = AirPath.OPEN.passive(FACE, MEDIUM).quadraticPaS2PerM6();
        assertThat(more).isCloseTo(1.5 * 0.6 / (0.02 * 0.02), within(1e-9));
    }

    /** Property: more open, or deeper outside, never resists more. */
    @Test
    void moreOpenNeverResistsMore() {
        for (int i = 2; i <= 100; i++) {
            double before = (i - 1) / 100.0;
            double after = i / 100.0;
            assertThat(of(AirPath.ofPanel(after)).lossPa(0.03))
                    .isLessThan(of(AirPath.ofPanel(before)).lossPa(0.03));
            assertThat(of(behind(0.5, after)).lossPa(0.03))
                    .isLessThan(of(behind(0.5, before)).lossPa(0.03));
            assertThat(of(covered(new Outlet(0.2, after * 0.02, 0.02))).lossPa(0.03))
                    .isLessThan(
                            of(covered(new Outlet(0.2, before * 0.02, 0.02))).lossPa(0.03));
        }
    }

    @Test
    void refusesSharesAndDepthsThatAreNone() {
        assertThatThrownBy(() -> AirPath.ofPanel(1.2)).hasMessageContaining("openShare must be in [0, 1] but was 1.2");
        assertThatThrownBy(() -> behind(0.5, -0.01)).hasMessageContaining("at least 0 m but was -0.01");
        assertThatThrownBy(() -> covered(new Outlet(Double.NaN, 0, 0))).hasMessageContaining("skinShare");
        assertThatThrownBy(() -> new AirPath(1, Where.FACE, OptionalDouble.of(-0.1), Optional.empty(), INFINITY))
                .hasMessageContaining("filterShare");
    }
}

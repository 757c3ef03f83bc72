package loopwright.loop.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AirResistanceTest {

    @Test
    void losesLinearAndQuadraticParts() {
        // 3·0.5 + 8·0.25
        assertThat(new AirResistance(3, 8).lossPa(0.5)).isCloseTo(3.5, within(1e-12));
        assertThat(new AirResistance(3, 8).slopePaSPerM3(0.5)).isCloseTo(11, within(1e-12));
    }

    @Test
    void oneBehindTheOtherAdds() {
        AirResistance both = new AirResistance(1, 2).then(new AirResistance(3, 4));

        assertThat(both).isEqualTo(new AirResistance(4, 6));
        assertThat(AirResistance.NONE.then(both)).isEqualTo(both);
        assertThat(both.then(AirResistance.CLOSED).isClosed()).isTrue();
    }

    /** Closed form: of equal quadratic ways two carry twice the flow at one pressure, so a quarter; 1/√b adds. */
    @Test
    void sideBySideFlowsAdd() {
        AirResistance way = new AirResistance(0, 100);
        assertThat(way.beside(way).quadraticPaS2PerM6()).isCloseTo(25, within(1e-12));
        // 1/√4 + 1/√16 = 3/4
        assertThat(new AirResistance(0, 4).beside(new AirResistance(0, 16)).quadraticPaS2PerM6())
                .isCloseTo(16.0 / 9, within(1e-12));
        assertThat(AirResistance.CLOSED.beside(way)).isEqualTo(way);
        assertThat(way.beside(AirResistance.CLOSED)).isEqualTo(way);
    }

    /** A skin of 30 % with 4 mm holes over 0.03 m², beside slots of 60 cm², as covers have them: from 1 Pa within 4 %. */
    @Test
    void aSkinBesideSlotsIsWithinAFewPercent() {
        AirResistance skin = new AirResistance(7.5, 13_000);
        AirResistance slots = new AirResistance(0, 46_000);
        for (double pressure = 1; pressure < 100; pressure *= 1.5) {
            assertThat(skin.beside(slots).flowM3PerS(pressure))
                    .as("%s Pa", pressure)
                    .isCloseTo(apart(skin, slots, pressure), Percentage.withPercentage(4));
        }
    }

    private static double apart(AirResistance one, AirResistance other, double pressurePa) {
        return one.flowM3PerS(pressurePa) + other.flowM3PerS(pressurePa);
    }

    /** Property: the flow that a pressure drives loses that pressure, either way. */
    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void flowAndPressureAreInverse(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            AirResistance way = new AirResistance(
                    i % 3 == 0 ? 0 : StrictMath.pow(10, 6 * random.nextDouble() - 3),
                    i % 3 == 1 ? 0 : StrictMath.pow(10, 8 * random.nextDouble()));
            double pressure = StrictMath.pow(10, 6 * random.nextDouble() - 4);
            double flow = way.flowM3PerS(pressure);
            assertThat(way.lossPa(flow))
                    .as("seed %d: %s at %s Pa", seed, way, pressure)
                    .isCloseTo(pressure, Percentage.withPercentage(1e-9));
            assertThat(way.flowM3PerS(-pressure)).isEqualTo(-flow);
        }
    }

    @Test
    void nothingPassesAClosedWay() {
        assertThat(AirResistance.CLOSED.flowM3PerS(1e6)).isZero();
        assertThat(AirResistance.CLOSED.times(1.2)).isEqualTo(AirResistance.CLOSED);
        assertThat(new AirResistance(2, 3).times(2)).isEqualTo(new AirResistance(4, 6));
    }

    @Test
    void refusesWhatIsNone() {
        assertThatThrownBy(() -> new AirResistance(-1, 0)).hasMessageContaining("at least 0 but was -1.0");
        assertThatThrownBy(() -> new AirResistance(0, Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new AirResistance(0, 1).beside(AirResistance.NONE))
                .hasMessageContaining("side by side");
    }
}

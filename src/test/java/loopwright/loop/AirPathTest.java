package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AirPathTest {

    @Test
    void lossesOfPanelFilterAndCoverAdd() {
        AirPath path = new AirPath(0.4, OptionalDouble.of(0.5), OptionalDouble.of(0.6));

        // Idelchik diagram 4-14 at 0.4, 0.5 and 0.6: 8.7579 + 4.3695 + 2.2570.
        assertThat(path.lossCoefficient()).isCloseTo(15.3844, within(3e-4));
        // On 1/2 · 1.2 kg/m³ · (2 m/s)² = 2.4 Pa.
        assertThat(path.resistancePa(2)).isCloseTo(2.4 * 15.3844, within(1e-3));
    }

    @Test
    void anySolidPlateClosesThePath() {
        assertThat(AirPath.ofPanel(0).isClosed()).isTrue();
        assertThat(new AirPath(1, OptionalDouble.of(0), OptionalDouble.empty()).isClosed())
                .isTrue();
        assertThat(new AirPath(1, OptionalDouble.empty(), OptionalDouble.of(0)).isClosed())
                .isTrue();
        assertThat(AirPath.OPEN.isClosed()).isFalse();
        assertThatThrownBy(() -> AirPath.ofPanel(0).lossCoefficient()).hasMessageContaining("closed path");
    }

    @Test
    void refusesSharesOutsideZeroToOne() {
        assertThatThrownBy(() -> AirPath.ofPanel(1.2)).hasMessageContaining("openShare must be in [0, 1] but was 1.2");
        assertThatThrownBy(() -> new AirPath(1, OptionalDouble.of(-0.1), OptionalDouble.empty()))
                .hasMessageContaining("filterShare");
        assertThatThrownBy(() -> new AirPath(1, OptionalDouble.empty(), OptionalDouble.of(Double.NaN)))
                .hasMessageContaining("coverShare");
    }
}

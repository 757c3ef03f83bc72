package loopwright.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Supply;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

class SupplyNoiseTest {

    private static Supply supply(Supply.NoisePoint... points) {
        Supply was = SmallParts.supply("s", 140, 40, 500);
        return new Supply(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.form(),
                was.body(),
                was.plugRoomMm(),
                was.output(),
                Optional.empty(),
                List.of(),
                List.of(points),
                Optional.empty());
    }

    @Test
    void withoutPointsItIsAlwaysAtItsLoudest() {
        assertThat(SupplyNoise.levelDBA(supply(), 0)).isEqualTo(25);
        assertThat(SupplyNoise.levelDBA(supply(), 500)).isEqualTo(25);
    }

    /** 20 % 10 dB(A), 60 % 18: at 40 % 14; outside the nearest. Loads: 40, 100, 200, 300, 500 W of 500. */
    @Test
    void straightLinesBetweenPoints() {
        Supply supply = supply(new Supply.NoisePoint(20, 10), new Supply.NoisePoint(60, 18));
        assertThat(SupplyNoise.levelDBA(supply, 40)).isEqualTo(10);
        assertThat(SupplyNoise.levelDBA(supply, 100)).isEqualTo(10);
        assertThat(SupplyNoise.levelDBA(supply, 200)).isCloseTo(14, within(1e-12));
        assertThat(SupplyNoise.levelDBA(supply, 300)).isEqualTo(18);
        assertThat(SupplyNoise.levelDBA(supply, 500)).isEqualTo(18);
    }
}

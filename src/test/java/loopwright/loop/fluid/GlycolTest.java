package loopwright.loop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Mass against volume. */
class GlycolTest {

    private static final long SEED = 20_260_101;

    /** All published pairs, ASHRAE (see the header); volumes are rounded to 0.1 %, and every fifth is one of our own points. */
    @ParameterizedTest(name = "{0}: {1} % by volume is {2} % by mass")
    @CsvFileSource(resources = "/fluid/glycol-volume-by-mass.csv")
    void meetsThePublishedPairs(Glycol glycol, double volumePercent, double massPercent) {
        assertThat(100 * glycol.volumeFraction(massPercent / 100)).isCloseTo(volumePercent, within(0.15));
        assertThat(100 * glycol.massFraction(volumePercent / 100)).isCloseTo(massPercent, within(0.15));
    }

    @ParameterizedTest(name = "{0}: {1} % by volume is {2} % by mass")
    @CsvSource({
        "PROPYLENE, 19.4, 20", "PROPYLENE, 24.4, 25", "PROPYLENE, 29.4, 30", "PROPYLENE, 39.6, 40",
                "PROPYLENE, 49.9, 50",
        "ETHYLENE, 18.1, 20", "ETHYLENE, 22.9, 25", "ETHYLENE, 27.7, 30", "ETHYLENE, 37.5, 40", "ETHYLENE, 47.6, 50",
        "PROPYLENE, 0, 0", "ETHYLENE, 0, 0"
    })
    void isExactAtTheMainPairs(Glycol glycol, double volumePercent, double massPercent) {
        assertThat(100 * glycol.volumeFraction(massPercent / 100)).isCloseTo(volumePercent, within(1e-12));
        assertThat(100 * glycol.massFraction(volumePercent / 100)).isCloseTo(massPercent, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource
    void goesThereAndBack(Glycol glycol) {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < 1000; i++) {
            double mass = random.nextDouble(0, 0.6);
            assertThat(glycol.massFraction(glycol.volumeFraction(mass)))
                    .as("mass %s, seed %s", mass, SEED)
                    .isCloseTo(mass, within(1e-14));
        }
    }

    @ParameterizedTest
    @EnumSource
    void moreByMassIsMoreByVolume(Glycol glycol) {
        double before = -1;
        for (int i = 0; i <= 600; i++) {
            double volume = glycol.volumeFraction(i / 1000.0);
            assertThat(volume).isGreaterThan(before);
            before = volume;
        }
    }

    /** The largest volume fraction is 60 % by mass, and no rounding takes it past what mixtures allow. */
    @Test
    void takesTheWholeRange() {
        assertThat(GlycolWater.ofVolume(Glycol.PROPYLENE, 0.60).massFraction()).isEqualTo(0.60);
        assertThat(GlycolWater.ofVolume(Glycol.ETHYLENE, 0.578).massFraction()).isEqualTo(0.60);
    }

    @Test
    void refusesWhatIsOutside() {
        for (double fraction : new double[] {-0.001, 0.6001, Double.NaN}) {
            assertThatThrownBy(() -> Glycol.PROPYLENE.massFraction(fraction))
                    .hasMessage("volume fraction must be in [0, 0.6] but was " + fraction);
            assertThatThrownBy(() -> Glycol.PROPYLENE.volumeFraction(fraction))
                    .hasMessage("mass fraction must be in [0, 0.6] but was " + fraction);
            assertThatThrownBy(() -> new GlycolWater(Glycol.ETHYLENE, fraction))
                    .hasMessage("mass fraction must be in [0, 0.6] but was " + fraction);
        }
        assertThatThrownBy(() -> Glycol.ETHYLENE.massFraction(0.579))
                .hasMessage("volume fraction must be in [0, 0.578] but was 0.579");
    }
}

package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.part.Pump;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SoundTest {

    /** Fan laws (ASHRAE, HVAC Systems and Equipment, Fans): 50·log10 of the speed ratio, computed. */
    @ParameterizedTest
    @CsvSource({"80, -4.8455", "50, -15.0515", "100, 0"})
    void aSlowerFanIsQuieterByTheFanLaw(double dutyPercent, double changeDB) {
        double level = Sound.levelDBA(SampleParts.PRESSURE_120, new Duty(dutyPercent));
        assertThat(level - 31).isCloseTo(changeDB, within(1e-4));
    }

    /** The same law upwards, as from a lower duty to a higher: ratios 2, 1.5 and 1.25. */
    @ParameterizedTest
    @CsvSource({"40, 80, 15.0515", "40, 60, 8.8046", "40, 50, 4.8455"})
    void aFasterFanIsLouderByTheFanLaw(double fromPercent, double toPercent, double changeDB) {
        double from = Sound.levelDBA(SampleParts.PRESSURE_120, new Duty(fromPercent));
        double to = Sound.levelDBA(SampleParts.PRESSURE_120, new Duty(toPercent));
        assertThat(to - from).isCloseTo(changeDB, within(1e-4));
    }

    @Test
    void neitherFanNorPumpGoesUnderItsLeastDuty() {
        assertThat(Sound.levelDBA(SampleParts.PRESSURE_120, new Duty(3)))
                .isEqualTo(Sound.levelDBA(SampleParts.PRESSURE_120, new Duty(10)));
        assertThat(Sound.levelDBA(pump(), new Duty(20))).isEqualTo(Sound.levelDBA(pump(), new Duty(50)));
        // 32 + 50·log10(0.5)
        assertThat(Sound.levelDBA(pump(), new Duty(50))).isCloseTo(16.9485, within(1e-4));
    }

    /** By definition: n equal sources add 10·log10 n. */
    @ParameterizedTest
    @CsvSource({"2, 3.0103", "3, 4.7712", "4, 6.0206", "6, 7.7815", "10, 10"})
    void equalSourcesAdd(int sources, double moreDB) {
        double level = SoundPower.ofDBA(23).times(sources).levelDBA().orElseThrow();
        assertThat(level - 23).isCloseTo(moreDB, within(1e-4));
    }

    @Test
    void unequalSourcesAdd() {
        assertThat(SoundPower.ofDBA(30).plus(SoundPower.ofDBA(24)).levelDBA().orElseThrow())
                .isCloseTo(30.9732, within(1e-4));
        assertThat(SoundPower.ofDBA(30).plus(SoundPower.ofDBA(20)).levelDBA().orElseThrow())
                .isCloseTo(30.4139, within(1e-4));
        assertThat(SoundPower.power10(30)).isEqualTo(1000);
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53})
    void anyOrderGivesTheSameSum(long seed) {
        Random random = new Random(seed);
        List<SoundPower> sources = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            sources.add(SoundPower.ofDBA(-10 + 60 * random.nextDouble()));
        }
        SoundPower forwards = sources.stream().reduce(SoundPower.NONE, SoundPower::plus);
        Collections.shuffle(sources, random);
        assertThat(sources.stream().reduce(SoundPower.NONE, SoundPower::plus)).isEqualTo(forwards);
    }

    @Test
    void silenceHasNoLevel() {
        assertThat(SoundPower.NONE.levelDBA()).isEmpty();
        assertThat(SoundPower.NONE.plus(SoundPower.ofDBA(0)).levelDBA()).hasValue(0);
        assertThat(SoundPower.NONE).isLessThan(SoundPower.ofDBA(0));
    }

    @Test
    void refusesLevelsAndDutiesThatAreNone() {
        assertThatThrownBy(() -> SoundPower.ofDBA(Double.NaN)).hasMessageContaining("-40 to 120");
        assertThatThrownBy(() -> new SoundPower(-1)).hasMessageContaining("at least 0");
        assertThatThrownBy(() -> new Duty(0)).hasMessageContaining("above 0 to 100 %");
        assertThatThrownBy(() -> Duty.FULL.speedShare(101)).hasMessageContaining("least duty");
    }

    private static Pump pump() {
        Dimension none = Dimension.ofHmm(0);
        return new Pump(
                "pump",
                "Sample pump",
                Optional.empty(),
                new Purchase(0, 0),
                Pump.Kind.PUMP,
                new SizeMm(none, none, none),
                new Pump.Water(List.of(), 50, none),
                new Pump.Electric(18, 15, 50, 32));
    }
}

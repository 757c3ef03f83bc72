package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.loop.air.AirPath.Outlet;
import loopwright.testing.MachineParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fans of 23 dB(A) each at full speed. */
class MountSoundTest {

    private static Machine.FanMount mount(AirPath path, int layers) {
        return Cooled.mount("front", "3x120", AirDirection.IN, layers, path);
    }

    private static double level(Machine.FanMount mount) {
        return MountSound.of(mount).levelDBA().orElseThrow();
    }

    private static Machine.FanMount bare(AirPath path) {
        Machine.FanMount m = mount(path, 1);
        return new Machine.FanMount(m.mount(), m.direction(), m.fans(), m.air(), Optional.empty());
    }

    private static AirPath path(double openShare, OptionalDouble filter, Optional<Outlet> cover) {
        return new AirPath(openShare, Where.FACE, filter, cover, Double.POSITIVE_INFINITY);
    }

    /** n equal sources add 10·log10 n: three 4.7712 dB, six 7.7815. */
    @Test
    void equalFansAdd() {
        assertThat(level(bare(AirPath.OPEN))).isCloseTo(23 + 4.7712, within(1e-4));
        assertThat(level(mount(AirPath.OPEN, 2)) - level(mount(AirPath.OPEN, 1)))
                .isCloseTo(3.0103, within(1e-4));
    }

    /** Fan laws: 50·log10 of the speed. */
    @ParameterizedTest
    @CsvSource({"80, -4.8455", "50, -15.0515"})
    void slowerIsQuieter(double duty, double changeDB) {
        Machine.FanMount mount = mount(AirPath.OPEN, 1);
        assertThat(level(mount.at(new Duty(duty))) - level(mount)).isCloseTo(changeDB, within(1e-4));
    }

    /** Common practice, no source: a radiator adds 2 to 4 dB. */
    @Test
    void aRadiatorIsHeard() {
        assertThat(level(mount(AirPath.OPEN, 1)) - level(bare(AirPath.OPEN))).isBetween(2.0, 4.0);
    }

    @Test
    void whatStandsCloseToAFanIsHeardOnce() {
        double open = level(mount(AirPath.OPEN, 1));
        double grille = level(mount(path(0.5, OptionalDouble.empty(), Optional.empty()), 1));
        Optional<Outlet> skin = Optional.of(new Outlet(0.3, 0, 0.02));

        assertThat(grille).isGreaterThan(open);
        assertThat(level(mount(path(1, OptionalDouble.of(0.4), Optional.empty()), 1)))
                .isEqualTo(grille);
        assertThat(level(mount(path(1, OptionalDouble.empty(), skin), 1))).isEqualTo(grille);
        assertThat(level(mount(path(0.5, OptionalDouble.of(0.4), skin), 1))).isEqualTo(grille);
        assertThat(level(mount(path(0.9, OptionalDouble.empty(), Optional.empty()), 1)))
                .isEqualTo(open);
    }

    /** 30 dB(A) at full speed; half of it is 15.0515 dB less; under its least duty it turns at that. */
    @Test
    void aPumpFollowsTheSameLaw() {
        Machine.PumpAt full = new Machine.PumpAt(MachineParts.pump(38, 25, 19), Duty.FULL);
        Machine.PumpAt half = new Machine.PumpAt(full.pump(), new Duty(50));
        assertThat(MountSound.of(full).levelDBA().orElseThrow()).isCloseTo(30, within(1e-4));
        assertThat(MountSound.of(half).levelDBA().orElseThrow()).isCloseTo(14.9485, within(1e-4));
        assertThat(MountSound.of(new Machine.PumpAt(full.pump(), new Duty(5))))
                .isEqualTo(MountSound.of(new Machine.PumpAt(full.pump(), new Duty(20))));
    }
}

package loopwright.loop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.catalog.chassis.Mount.Where;
import loopwright.catalog.part.Fan;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.AirPath;
import loopwright.testing.MachineParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties over random machines: which of two machines is cooler, moves more, or is louder. */
class MachineOrderTest {

    private static final int ROUNDS = 250;

    /** Far above what anybody delivers; beyond, radiators have next to no air. */
    private static final double HOT_K = 100;

    private static final double SLACK_K = 1e-7;

    private static Machine at(Machine machine, double dutyPercent) {
        return Cooled.mounted(
                machine,
                machine.mounts().stream().map(m -> m.at(new Duty(dutyPercent))).toList());
    }

    private static Machine pumped(Machine machine, double dutyPercent) {
        Machine.Water w = machine.water();
        Machine.PumpAt pump = new Machine.PumpAt(w.pump().pump(), new Duty(dutyPercent));
        return new Machine(
                machine.site(),
                machine.mounts(),
                machine.openings(),
                new Machine.Water(pump, w.coolant(), w.runs(), w.blocks(), w.order()),
                machine.caseHeatW());
    }

    private static Optional<Steady> usable(Machine machine) {
        return MachineDice.solve(machine).found().filter(s -> s.coolantOverRoomK() < HOT_K);
    }

    /**
     * Property: with equal least duties slower fans never make the coolant cooler. Not so where a row is all but stalled by
     * stronger ones: those are left out here by their coolant, hundreds of kelvin over the room.
     */
    @ParameterizedTest
    @ValueSource(longs = {10_000, 20_000, 30_000, 40_000})
    void slowerFansNeverCoolBetter(long seed) {
        int compared = 0;
        for (long s = seed; s < seed + ROUNDS; s++) {
            Machine machine = new MachineDice(s).machine();
            double duty = machine.mounts().get(0).fans().duty().percent();
            Optional<Steady> faster = usable(machine);
            Optional<Steady> slower = usable(at(machine, duty - 5));
            if (faster.isPresent() && slower.isPresent()) {
                compared++;
                assertThat(slower.get().coolantOverRoomK())
                        .as("seed %d", s)
                        .isGreaterThanOrEqualTo(faster.get().coolantOverRoomK() - SLACK_K);
            }
        }
        assertThat(compared).isGreaterThan(ROUNDS / 2);
    }

    /**
     * With unequal least duties they can: told to slow down, a bare row slows and the radiator's row beside it, already at
     * its least, does not, so less of the air goes past the radiator. A search must not skip slower duties unseen.
     */
    @Test
    void withUnequalLeastDutiesSlowerFansMayCoolBetter() {
        Fan stubborn = MachineParts.fan("stubborn", 120, 82, 14, 60);
        Machine.FanMount roof = Cooled.mount("roof", "2x120", AirDirection.OUT, 1, AirPath.OPEN);
        Machine.FanMount radiator = new Machine.FanMount(
                "roof", AirDirection.OUT, new Machine.Fans(stubborn, 2, 1, Duty.FULL), roof.air(), roof.radiator());
        Machine.FanMount bare = new Machine.FanMount(
                "rear",
                AirDirection.OUT,
                new Machine.Fans(MachineParts.fan("quiet", 120, 82, 14, 10), 1, 1, Duty.FULL),
                roof.air(),
                Optional.empty());
        Machine machine = Cooled.mounted(Cooled.usual(), List.of(radiator, bare));

        double fasterK = Cooled.steady(at(machine, 50)).coolantOverRoomK();
        double slowerK = Cooled.steady(at(machine, 30)).coolantOverRoomK();

        assertThat(fasterK).isBetween(10.0, 100.0);
        assertThat(slowerK).isLessThan(fasterK - 0.5);
    }

    /** Property: what bounds a mount at full duty bounds it at any: alone, or helped as much as fans of that duty can. */
    @ParameterizedTest
    @ValueSource(longs = {51_000, 52_000})
    void aMountAloneOrHelpedMovesNoMoreWhenSlower(long seed) {
        for (long s = seed; s < seed + ROUNDS; s++) {
            MachineDice dice = new MachineDice(s);
            Machine machine = dice.machine();
            Machine.FanMount mount = machine.mounts().get(0);
            double strongestPa = dice.between(0, 90);
            double least = dice.oneIn(2) ? 10 : 100;
            double before = 0;
            for (double duty = 10; duty <= 100; duty += 10) {
                double speed = new Duty(duty).speedShare(least);
                double help = strongestPa * speed * speed;
                double inside = mount.direction() == AirDirection.OUT ? help : -help;
                double flow = MachineDice.model(machine.site())
                        .branch(mount.at(new Duty(duty)), Nudge.NONE)
                        .coreFlowM3PerS(inside, 0);
                assertThat(flow).as("seed %d, duty %s", s, duty).isGreaterThanOrEqualTo(before * (1 - 1e-9));
                before = flow;
            }
        }
    }

    /** Property: more open at a mount never takes air from that mount. */
    @ParameterizedTest
    @ValueSource(longs = {61_000, 62_000, 63_000})
    void moreFreeAreaNeverTakesAirFromItsMount(long seed) {
        for (long s = seed; s < seed + ROUNDS; s++) {
            Machine machine = new MachineDice(s).machine();
            List<Machine.FanMount> wider = new ArrayList<>(machine.mounts());
            Machine.FanMount first = machine.mounts().get(0);
            AirPath path = first.air().path();
            AirPath open = new AirPath(
                    Math.min(1, path.openShare() * 1.2),
                    path.where(),
                    path.filterShare(),
                    path.cover(),
                    path.outsideDepthM());
            wider.set(
                    0,
                    new Machine.FanMount(
                            first.mount(),
                            first.direction(),
                            first.fans(),
                            new Machine.MountAir(open, first.air().face()),
                            first.radiator()));
            Optional<Steady> before = MachineDice.solve(machine).found();
            Optional<Steady> after =
                    MachineDice.solve(Cooled.mounted(machine, wider)).found();
            if (before.isPresent()) {
                assertThat(after.orElseThrow().air().wholeM3PerS(0))
                        .as("seed %d", s)
                        .isGreaterThanOrEqualTo(before.get().air().wholeM3PerS(0) * (1 - 1e-9));
            }
        }
    }

    /** Property: a faster pump never lowers flow, and a pump that makes no more heat never warms the coolant by it. */
    @ParameterizedTest
    @ValueSource(longs = {71_000, 72_000})
    void aFasterPumpNeverLowersFlow(long seed) {
        for (long s = seed; s < seed + ROUNDS; s++) {
            Machine machine = new MachineDice(s).machine();
            Optional<Steady> slow = usable(pumped(machine, 50));
            Optional<Steady> fast = usable(pumped(machine, 80));
            if (slow.isPresent() && fast.isPresent()) {
                assertThat(fast.get().water().flowM3PerS())
                        .as("seed %d", s)
                        .isGreaterThanOrEqualTo(slow.get().water().flowM3PerS());
            }
        }
    }

    /** Property: higher up, in a room as warm, the coolant is never cooler. */
    @ParameterizedTest
    @ValueSource(longs = {81_000, 82_000})
    void higherUpIsNeverCooler(long seed) {
        for (long s = seed; s < seed + ROUNDS; s++) {
            Machine machine = new MachineDice(s).machine();
            Optional<Steady> low = usable(standing(machine, 0));
            Optional<Steady> high = usable(standing(machine, 2000));
            if (low.isPresent() && high.isPresent()) {
                assertThat(high.get().coolantOverRoomK())
                        .as("seed %d", s)
                        .isGreaterThan(low.get().coolantOverRoomK());
            }
        }
    }

    private static Machine standing(Machine m, double altitudeM) {
        return new Machine(new Machine.Site(24, altitudeM), m.mounts(), m.openings(), m.water(), m.caseHeatW());
    }

    /** Property: more heat anywhere never cools anything. */
    @ParameterizedTest
    @ValueSource(longs = {91_000, 92_000})
    void moreHeatNeverCools(long seed) {
        for (long s = seed; s < seed + ROUNDS; s++) {
            Machine m = new MachineDice(s).machine();
            Optional<Steady> before = usable(m);
            Optional<Steady> after =
                    usable(new Machine(m.site(), m.mounts(), m.openings(), m.water(), m.caseHeatW() + 40));
            if (before.isPresent() && after.isPresent()) {
                assertThat(after.get().caseOverRoomK())
                        .as("seed %d", s)
                        .isGreaterThan(before.get().caseOverRoomK());
                assertThat(after.get().coolantOverRoomK())
                        .as("seed %d", s)
                        .isGreaterThanOrEqualTo(before.get().coolantOverRoomK() - 1e-3);
            }
        }
    }

    /** Property: every duty is louder than the one below it. */
    @Test
    void fasterIsLouder() {
        for (long s = 1; s < 200; s++) {
            Machine machine = new MachineDice(s).machine();
            for (Machine.FanMount mount : machine.mounts()) {
                for (int duty = 15; duty <= 100; duty += 5) {
                    assertThat(MountSound.of(mount.at(new Duty(duty))))
                            .as("seed %d duty %d", s, duty)
                            .isGreaterThan(MountSound.of(mount.at(new Duty(duty - 5))));
                }
            }
        }
    }

    /** The example of the class's own limit: a weak row all but stalled by a strong one behind a fine filter. */
    @Test
    void aRowThatIsAllButStalledIsFarTooHotToDeliver() {
        AirPath filtered =
                new AirPath(0.6, Where.FACE, OptionalDouble.of(0.2), Optional.empty(), Double.POSITIVE_INFINITY);
        Machine.FanMount weak = Cooled.mount("front", "1x120", AirDirection.IN, 1, AirPath.OPEN);
        Machine.FanMount strong = new Machine.FanMount(
                "floor",
                AirDirection.IN,
                new Machine.Fans(MachineParts.fan("strong", 120, 126, 43, 10), 3, 2, Duty.FULL),
                new Machine.MountAir(filtered, weak.air().face()),
                Optional.empty());
        Machine machine = Cooled.mounted(Cooled.usual(), List.of(weak, strong));
        SteadyState state = MachineDice.solve(machine);
        assertThat(state.found().map(Steady::coolantOverRoomK).orElse(1000.0)).isGreaterThan(HOT_K);
    }
}

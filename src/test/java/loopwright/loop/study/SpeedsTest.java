package loopwright.loop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.brief.BriefLimits.HeatLimits;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.SoundPower;
import loopwright.loop.Steady;
import org.junit.jupiter.api.Test;

final class SpeedsTest {

    private final MachineModel model = DemoMachines.model();

    private static SpeedLimits coolant(double maxC) {
        return new SpeedLimits(maxC, HeatLimits.NONE, DemoMachines.practice());
    }

    private static SpeedLimits parts(double coolantMaxC, double processorMaxC, double cardMaxC, double caseMaxC) {
        HeatLimits heat = new HeatLimits(
                Optional.empty(), Optional.of(processorMaxC), Optional.of(cardMaxC), Optional.of(caseMaxC));
        return new SpeedLimits(coolantMaxC, heat, DemoMachines.practice());
    }

    @Test
    void fasterIsCoolerAndLouder() {
        List<SpeedPoint> curve = Speeds.curve(model, DemoMachines.usual(), List.of(30, 50, 70, 100));
        for (int i = 1; i < curve.size(); i++) {
            assertThat(curve.get(i).coolantOverRoomK().orElseThrow())
                    .isLessThan(curve.get(i - 1).coolantOverRoomK().orElseThrow());
            assertThat(curve.get(i).sound()).isGreaterThan(curve.get(i - 1).sound());
        }
        assertThat(curve.get(2).coolantOverRoomK().orElseThrow())
                .isCloseTo(
                        model.solve(DemoMachines.usual()).found().orElseThrow().coolantOverRoomK(), within(1e-9));
        // More fans blow out than in, so the surplus is below 0.
        assertThat(curve.get(2).fanSurplusM3PerS().orElseThrow()).isNegative();
    }

    /** 1 % exactly: no duties that are quieter by enumeration of all of them hold the limit. */
    @Test
    void oneMountIsTheQuietestOfAllItsDuties() {
        Machine machine = DemoMachines.single();
        for (SpeedLimits limits : List.of(coolant(37.5), coolant(38), coolant(45), parts(45, 60, 90, 50))) {
            Optional<Quiet> quiet = Speeds.quietest(model, machine, limits);
            assertThat(quiet.map(Quiet::sound)).isPresent().isEqualTo(quietestOfAll(machine, limits, 1));
        }
    }

    /** Every duty vector on a coarse grid of the range that is at least as quiet as the answer must break a limit. */
    @Test
    void nothingQuieterHoldsTheLimits() {
        List<SpeedLimits> all = List.of(
                coolant(36),
                coolant(39),
                coolant(42),
                parts(45, 62, 50, 45),
                parts(45, 80, 80, 31),
                parts(39, 66, 60, 33));
        for (Machine machine : List.of(DemoMachines.usual(), DemoMachines.allIn())) {
            for (SpeedLimits limits : all) {
                Optional<Quiet> quiet = Speeds.quietest(model, machine, limits);
                Optional<SoundPower> coarse = quietestOfAll(machine, limits, 9);
                if (quiet.isEmpty()) {
                    assertThat(coarse).as("%s", limits.coolantMaxC()).isEmpty();
                } else {
                    assertThat(limits.hold(quiet.get().machine(), quiet.get().state()))
                            .isTrue();
                    coarse.ifPresent(s ->
                            assertThat(quiet.get().sound()).as("%s", limits).isLessThanOrEqualTo(s));
                    noneNearIsQuieter(machine, limits, quiet.get());
                }
            }
        }
    }

    private void noneNearIsQuieter(Machine machine, SpeedLimits limits, Quiet quiet) {
        Motors motors = new Motors(model, machine);
        Random random = new Random(42);
        DutyBox all = motors.all();
        for (int i = 0; i < 3000; i++) {
            List<Integer> percents = new ArrayList<>();
            for (int m = 0; m <= motors.pump(); m++) {
                int percent = quiet.duties().at(m) + random.nextInt(13) - 6;
                percents.add(Math.max(all.low().at(m), Math.min(100, percent)));
            }
            Duties near = new Duties(percents);
            if (motors.sound(near).compareTo(quiet.sound()) < 0) {
                assertThat(holds(motors, near, limits)).as("seed 42: %s", near).isFalse();
            }
        }
    }

    private static boolean holds(Motors motors, Duties duties, SpeedLimits limits) {
        return motors.solve(duties)
                .filter(s -> limits.hold(motors.machine(duties), s))
                .isPresent();
    }

    private Optional<SoundPower> quietestOfAll(Machine machine, SpeedLimits limits, int step) {
        Motors motors = new Motors(model, machine);
        Optional<SoundPower> quietest = Optional.empty();
        List<Duties> all = grid(motors.all(), step);
        for (Duties duties : all) {
            SoundPower sound = motors.sound(duties);
            if ((quietest.isEmpty() || sound.compareTo(quietest.get()) < 0) && holds(motors, duties, limits)) {
                quietest = Optional.of(sound);
            }
        }
        return quietest;
    }

    private static List<Duties> grid(DutyBox all, int step) {
        List<Duties> out = List.of(all.low());
        for (int m = 0; m <= all.low().pump(); m++) {
            List<Duties> next = new ArrayList<>();
            for (Duties duties : out) {
                for (int p = all.low().at(m); p <= 100; p += step) {
                    next.add(duties.with(m, p));
                }
            }
            out = next;
        }
        return out;
    }

    /** The best case of a box is no warmer than any duties in it. */
    @Test
    void noDutiesUndercutTheBestCase() {
        Random random = new Random(7);
        for (Machine machine : List.of(DemoMachines.usual(), DemoMachines.allIn(), DemoMachines.single())) {
            Motors motors = new Motors(model, machine);
            for (int i = 0; i < 60; i++) {
                DutyBox box = randomBox(motors.all(), random);
                for (int k = 0; k < 10; k++) {
                    Duties duties = inside(box, random);
                    Steady state = motors.solve(duties).orElseThrow();
                    Machine at = motors.machine(duties);
                    assertThat(new BestCase(motors, coolant(state.water().meanC())).mayHold(box))
                            .as("seed 7: %s in %s", duties, box)
                            .isTrue();
                    assertThat(new BestCase(motors, asWarmAs(at, state)).mayHold(box))
                            .as("seed 7: parts of %s in %s", duties, box)
                            .isTrue();
                }
            }
        }
    }

    private static SpeedLimits asWarmAs(Machine machine, Steady state) {
        var junctions = loopwright.loop.Junctions.of(machine, state, DemoMachines.practice());
        return parts(
                state.water().meanC(),
                junctions.get(0).temperatureC(),
                junctions.get(1).temperatureC(),
                state.caseC());
    }

    private static DutyBox randomBox(DutyBox all, Random random) {
        Duties low = inside(all, random);
        int most = 1 + random.nextInt(40);
        List<Integer> high = new ArrayList<>();
        for (int m = 0; m <= low.pump(); m++) {
            high.add(Math.min(100, low.at(m) + random.nextInt(most)));
        }
        return new DutyBox(low, new Duties(high));
    }

    private static Duties inside(DutyBox box, Random random) {
        List<Integer> out = new ArrayList<>();
        for (int m = 0; m <= box.low().pump(); m++) {
            out.add(box.low().at(m) + random.nextInt(box.width(m) + 1));
        }
        return new Duties(out);
    }

    @Test
    void isEmptyWhereFullSpeedIsNotEnough() {
        assertThat(Speeds.quietest(model, DemoMachines.usual(), coolant(28))).isEmpty();
    }

    @Test
    void tellsHowMuchQuieterThanTheGiven() {
        Machine given = Changed.mounts(
                DemoMachines.usual(),
                DemoMachines.usual().mounts().stream().map(m -> m.at(Duty.FULL)).toList());
        Quiet quiet = Speeds.quietest(model, given, coolant(40)).orElseThrow();
        assertThat(quiet.quieterDB()).isPositive();
        assertThat(Speeds.sound(quiet.machine())).isEqualTo(quiet.sound());
        assertThat(quiet.quieterDB())
                .isCloseTo(
                        10
                                * Math.log10((double) Speeds.sound(given).millionths()
                                        / quiet.sound().millionths()),
                        within(1e-9));
    }
}

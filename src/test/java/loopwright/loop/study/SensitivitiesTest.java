package loopwright.loop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.quantity.Units;
import org.junit.jupiter.api.Test;

final class SensitivitiesTest {

    private final MachineModel model = DemoMachines.model();

    private Map<String, Effect> effects(Machine machine) {
        return Sensitivities.of(model, machine).stream().collect(Collectors.toMap(Effect::what, e -> e));
    }

    private Effect effect(Machine machine, String what) {
        return Optional.ofNullable(effects(machine).get(what)).orElseThrow();
    }

    @Test
    void namesEveryChangeThatCanBeMade() {
        assertThat(Sensitivities.of(model, DemoMachines.usual()))
                .extracting(Effect::what)
                .containsExactly(
                        "speed of all fans",
                        "speed of the fans on front",
                        "free area of front",
                        "core depth of the radiator on front",
                        "length of the radiator on front",
                        "speed of the fans on roof",
                        "free area of roof",
                        "core depth of the radiator on roof",
                        "length of the radiator on roof",
                        "speed of the fans on rear",
                        "free area of rear",
                        "coolant flow");
    }

    /** More coolant brings the hot and the cold end together; where air leaves nearly as warm as the coolant that may lift the mean. */
    @Test
    void moreOfEverythingButCoolantCoolsWhereAllBreathesTheRoom() {
        for (Effect effect : Sensitivities.of(model, DemoMachines.single())) {
            double most = effect.what().equals("coolant flow") ? 0.1 : 0;
            assertThat(effect.kelvin()).as(effect.what()).isBetween(-5.0, most).isNotZero();
        }
    }

    /** Area buys more than depth, and all fans more than those of one radiator: common practice. */
    @Test
    void aSectionBuysMoreThanAMillimetre() {
        assertThat(effect(DemoMachines.allIn(), "length of the radiator on front")
                        .kelvin())
                .isLessThan(effect(DemoMachines.allIn(), "core depth of the radiator on front")
                        .kelvin());
        assertThat(effect(DemoMachines.allIn(), "speed of all fans").kelvin())
                .isLessThan(effect(DemoMachines.allIn(), "speed of the fans on front")
                        .kelvin());
    }

    @Test
    void takesTheFansToFullSpeedAtMost() {
        Machine near = Changed.mounts(
                DemoMachines.single(),
                DemoMachines.single().mounts().stream()
                        .map(m -> m.at(new Duty(96)))
                        .toList());
        assertThat(effect(near, "speed of all fans").step()).isEqualTo("+4.2 %");
        Machine full = Changed.mounts(
                DemoMachines.single(),
                DemoMachines.single().mounts().stream()
                        .map(m -> m.at(Duty.FULL))
                        .toList());
        assertThat(effect(full, "speed of all fans").step()).isEqualTo("-10.0 %");
        assertThat(effect(full, "speed of all fans").kelvin()).isPositive();
        assertThat(effect(DemoMachines.single(), "speed of all fans").step()).isEqualTo("+10.0 %");
    }

    @Test
    void tenPercentMoreSpeedIsTheMachineAtThatDuty() {
        Machine faster = Changed.mounts(
                DemoMachines.single(),
                DemoMachines.single().mounts().stream()
                        .map(m -> m.at(new Duty(77)))
                        .toList());
        assertThat(effect(DemoMachines.single(), "speed of all fans").kelvin())
                .isCloseTo(overRoomK(faster) - overRoomK(DemoMachines.single()), within(1e-9));
    }

    private double overRoomK(Machine machine) {
        return model.solve(machine).found().orElseThrow().coolantOverRoomK();
    }

    /** The head that gives one litre a minute more, found the other way: what flow does a given head give? */
    @Test
    void oneLitreMoreIsWhatAStrongerPumpGives() {
        Machine machine = DemoMachines.single();
        Steady before = model.solve(machine).found().orElseThrow();
        Machine strong = Changed.pump(machine, Changed.headTimes(machine.water().pump(), 1.5));
        Steady after = model.solve(strong).found().orElseThrow();
        double more = Units.lPerMin(after.water().flowM3PerS() - before.water().flowM3PerS());
        assertThat(more).isPositive();
        assertThat(new MoreCoolant(model, machine, before).overRoomK(more).orElseThrow())
                .isCloseTo(after.coolantOverRoomK(), within(1e-6));
    }

    @Test
    void givesUpOnFlowsThatNoPumpReaches() {
        Machine machine = DemoMachines.single();
        Steady before = model.solve(machine).found().orElseThrow();
        assertThat(new MoreCoolant(model, machine, before).overRoomK(500)).isEmpty();
    }

    @Test
    void opensPanelsToOneAtMost() {
        Machine open = DemoMachines.of(List.of(
                DemoMachines.radiator(
                        "front", loopwright.loop.air.AirDirection.IN, "rad-2x140-30a", "fan-140-25-1200", 0.95),
                DemoMachines.radiator(
                        "roof", loopwright.loop.air.AirDirection.IN, "rad-2x120-30a", "fan-120-25-1300", 1)));
        assertThat(effect(open, "free area of front").step()).isEqualTo("+0.05");
        assertThat(effects(open)).doesNotContainKey("free area of roof");
    }
}

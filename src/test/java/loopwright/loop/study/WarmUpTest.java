package loopwright.loop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.loop.air.AirDirection;
import org.junit.jupiter.api.Test;

final class WarmUpTest {

    /** Density times heat capacity of a mixture with a quarter of propylene glycol, J/(m³·K): about 1020 × 3960, from memory. */
    private static final double COOLANT_J_PER_M3_K = 1020 * 3960.0;

    private final MachineModel model = DemoMachines.model();

    private WarmUp warmUp(Machine machine) {
        return WarmUp.of(model, machine, 0).orElseThrow();
    }

    private Steady steady(Machine machine) {
        return model.solve(machine).found().orElseThrow();
    }

    @Test
    void storesCoolantCopperAndBlocks() {
        // Coolant: radiators 165 + 125, blocks 15 (see below) and 45, pump 220 mL, 2 m of 10 mm bore 157 mL.
        Machine machine = DemoMachines.usual();
        double blockML = machine.water().blocks().get(0).flow().coolantML();
        double coolantM3 = (165 + 125 + blockML + 45 + 220 + 157.1) * 1e-6;
        double metalKg = 1.09 + 0.85 + 0.45 + 1.2;
        assertThat(warmUp(machine).heatCapacityJPerK())
                .isCloseTo(coolantM3 * COOLANT_J_PER_M3_K + metalKg * 385, within(60.0));
    }

    @Test
    void endsAtTheSteadyState() {
        for (Machine machine : List.of(DemoMachines.usual(), DemoMachines.allIn(), DemoMachines.single())) {
            assertThat(warmUp(machine).fromRoom().endC().orElseThrow())
                    .isCloseTo(steady(machine).water().meanC(), within(1e-9));
            assertThat(warmUp(machine).fromRoom().atC(0)).isEqualTo(25);
        }
    }

    @Test
    void takesTwiceAsLongWithTwiceTheStore() {
        WarmUp own = warmUp(DemoMachines.usual());
        double perML =
                (WarmUp.of(model, DemoMachines.usual(), 1000).orElseThrow().heatCapacityJPerK()
                                - own.heatCapacityJPerK())
                        / 1000;
        WarmUp doubled = WarmUp.of(model, DemoMachines.usual(), own.heatCapacityJPerK() / perML)
                .orElseThrow();
        assertThat(doubled.fromRoom().timeConstantS().orElseThrow()
                        / own.fromRoom().timeConstantS().orElseThrow())
                .isCloseTo(2, within(1e-9));
        assertThat(doubled.fromRoom().endC()).isEqualTo(own.fromRoom().endC());
    }

    /**
     * Heat in less heat out is what is stored; heat out at a coolant's temperature is the load at which the full model settles
     * there.
     */
    @Test
    void storesWhatIsNotTakenOut() {
        for (Machine machine : List.of(DemoMachines.usual(), DemoMachines.allIn(), DemoMachines.single())) {
            WarmUp warmUp = warmUp(machine);
            Course course = warmUp.fromRoom();
            double pumpW = machine.water().pump().heatW();
            double horizonS = course.timeConstantS().orElseThrow() * 3;
            int steps = 30;
            double netJ = 0;
            for (int i = 0; i < steps; i++) {
                double outW = heatOutW(machine, course.atC((i + 0.5) * horizonS / steps));
                netJ += (300 + pumpW - outW) * horizonS / steps;
            }
            double storedJ = warmUp.heatCapacityJPerK() * (course.atC(horizonS) - course.atC(0));
            assertThat(netJ / storedJ).isCloseTo(1, within(0.02));
        }
    }

    private double heatOutW(Machine machine, double coolantC) {
        double low = -0.5;
        double high = 1.2;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            double share = middle;
            Machine part = Changed.blocks(
                    machine,
                    machine.water().blocks().stream()
                            .map(b -> new Machine.BlockAt(b.name(), b.part(), b.flow(), b.heatW() * share))
                            .toList());
            if (steady(part).water().meanC() < coolantC) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 300 * high + machine.water().pump().heatW();
    }

    @Test
    void aDeadFanGroupIsNeverCooler() {
        for (Machine machine : List.of(DemoMachines.usual(), DemoMachines.allIn())) {
            double before = steady(machine).water().meanC();
            for (Machine.FanMount mount : machine.mounts()) {
                Course course = warmUp(machine).afterFansStop(Set.of(mount.mount()));
                assertThat(course.startC()).isCloseTo(before, within(1e-12));
                assertThat(course.endC().orElseThrow()).as(mount.mount()).isGreaterThan(before);
            }
        }
    }

    @Test
    void noFanStoppedIsTheSteadyState() {
        Machine machine = DemoMachines.usual();
        Course course = warmUp(machine).afterFansStop(Set.of());
        assertThat(course.endC().orElseThrow()).isCloseTo(course.startC(), within(1e-9));
    }

    @Test
    void aStandingMountLetsSomeAirThroughTheWayThePressureDrivesIt() {
        Machine machine = DemoMachines.allIn();
        var flow = new StandingFans(model, machine).flow(Set.of("roof"));
        assertThat(flow.insidePa()).isPositive();
        assertThat(flow.air().branches().get(1).direction()).isEqualTo(AirDirection.OUT);
        assertThat(flow.coreFlowM3PerS(1)).isBetween(0.05 * flow.coreFlowM3PerS(0), 0.95 * flow.coreFlowM3PerS(0));
        assertThat(flow.inM3PerS() - flow.outM3PerS()).isCloseTo(0, within(0.03 * flow.inM3PerS()));
    }

    @Test
    void withoutAnyFanTheCoolantRisesByItsHeatOverItsStore() {
        Machine machine = DemoMachines.usual();
        WarmUp warmUp = warmUp(machine);
        Course course = warmUp.afterAllFansStop();
        assertThat(course.timeConstantS()).isEmpty();
        assertThat(course.atC(60) - course.startC())
                .isCloseTo(60 * (300 + machine.water().pump().heatW()) / warmUp.heatCapacityJPerK(), within(1e-9));
    }

    @Test
    void aStandingBlockHeatsUpByItselfAlone() {
        Machine machine = DemoMachines.usual();
        List<StandingBlock> blocks = warmUp(machine).afterPumpStops(DemoMachines.practice());
        assertThat(blocks).extracting(StandingBlock::name).containsExactly(Machine.PROCESSOR, Machine.CARD);
        // Card: 190 W into 1.2 kg of copper and 45 mL.
        assertThat(blocks.get(1).riseKPerS()).isCloseTo(190 / (1.2 * 385 + 45e-6 * COOLANT_J_PER_M3_K), within(0.005));
        double junctionC = blocks.get(1).junctionC();
        assertThat(blocks.get(1).secondsUntil(junctionC + 10).orElseThrow())
                .isCloseTo(10 / blocks.get(1).riseKPerS(), within(1e-9));
        assertThat(blocks.get(1).secondsUntil(junctionC - 1)).hasValue(0);
    }

    @Test
    void theCoolantGoesRoundManyTimesInATimeConstant() {
        for (Machine machine : List.of(DemoMachines.usual(), DemoMachines.single())) {
            WarmUp warmUp = warmUp(machine);
            assertThat(warmUp.roundS())
                    .isLessThan(warmUp.fromRoom().timeConstantS().orElseThrow() / 5);
        }
    }

    @Test
    void refusesMountsWithoutFansAndLoopsWithoutHeat() {
        WarmUp warmUp = warmUp(DemoMachines.single());
        assertThatThrownBy(() -> warmUp.afterFansStop(Set.of("cellar"))).hasMessage("no fans on [cellar]");
        Machine cold = Changed.blocks(DemoMachines.single(), List.of());
        assertThatThrownBy(() -> WarmUp.of(model, cold, 0)).hasMessageContaining("above 0 W but were 0.0 and 0.0");
    }
}

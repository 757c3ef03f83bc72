package loopwright.loop.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loopwright.catalog.standard.Practice;
import loopwright.loop.Junctions;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Nudge;
import loopwright.loop.Steady;
import loopwright.loop.air.CaseFlow;

/**
 * How the coolant warms up after switch-on, and what happens when fans or the pump stop, at full load.
 *
 * <p>Coolant, radiators and blocks are one lump at the coolant's mean temperature; the case's air follows at once. What the
 * air takes out of the lump goes straight with its temperature: through the full model at full load and through the full model
 * with the pump's heat alone. So the end of every course is the steady state of the full model.
 *
 * <p><b>Units.</b> °C, K, s, W/K.
 *
 * <p><b>Valid for</b> times longer than the coolant's way round, {@link #roundS()}: seconds, against minutes of the time constant.
 * Where a fan stands, its mount is an opening ({@link StandingFans}). Without any air nothing is taken out, and the coolant
 * rises straight on: warm air's own lift is left out, which errs to the safe side.
 *
 * <p><b>Accuracy.</b> The lump is exact; between its two ends the full model's heat bends off the straight line by a few per
 * cent, as cold coolant is thicker. Masses are good for 10 to 15 % ({@link HeatStore}).
 *
 * <p><b>Source.</b> Lumped capacitance, [IncroperaDeWitt2007] section 5.1.
 */
public final class WarmUp {

    private final MachineModel model;
    private final Machine machine;
    private final Steady steady;
    private final HeatStore store;
    private final double moreCoolantML;

    private WarmUp(MachineModel model, Machine machine, Steady steady, double moreCoolantML) {
        this.model = model;
        this.machine = machine;
        this.steady = steady;
        this.store = new HeatStore(machine);
        this.moreCoolantML = moreCoolantML;
    }

    /**
     * The warm-up of a machine; empty when it has no steady state.
     *
     * @param moreCoolantML coolant that no part of the machine tells of: a reservoir of its own, at least 0
     * @throws IllegalArgumentException if that is below 0, or no block has any heat
     */
    public static Optional<WarmUp> of(MachineModel model, Machine machine, double moreCoolantML) {
        if (!(moreCoolantML >= 0 && blocksW(machine) > 0)) {
            throw new IllegalArgumentException(
                    "more coolant must be at least 0 mL and the blocks' heat above 0 W but were " + moreCoolantML
                            + " and " + blocksW(machine));
        }
        return model.solve(machine).found().map(s -> new WarmUp(model, machine, s, moreCoolantML));
    }

    /** What the loop stores, J/K. */
    public double heatCapacityJPerK() {
        return store.loopJPerK(moreCoolantML);
    }

    /** How long the coolant takes once round, s. */
    public double roundS() {
        return store.coolantM3(moreCoolantML) / steady.water().flowM3PerS();
    }

    /** From the room's temperature, switched on at full load. */
    public Course fromRoom() {
        return course(steady.air(), machine.site().roomC());
    }

    /**
     * From the steady state, as the fans of these mounts stop.
     *
     * @throws IllegalArgumentException if there is no such mount
     */
    public Course afterFansStop(Set<String> mounts) {
        Set<String> unknown = new HashSet<>(mounts);
        machine.mounts().forEach(m -> unknown.remove(m.mount()));
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("no fans on " + unknown);
        }
        return course(
                new StandingFans(model, machine).flow(mounts), steady.water().meanC());
    }

    /** From the steady state, as all fans stop. */
    public Course afterAllFansStop() {
        Set<String> all = new HashSet<>();
        machine.mounts().forEach(m -> all.add(m.mount()));
        return afterFansStop(all);
    }

    /** From the steady state, as the pump stops: each block by itself, in loop order. */
    public List<StandingBlock> afterPumpStops(Practice practice) {
        List<StandingBlock> out = new ArrayList<>();
        for (Junctions.Junction junction : Junctions.of(machine, steady, practice)) {
            for (Machine.BlockAt block : machine.water().blocks()) {
                if (block.name().equals(junction.name())) {
                    out.add(new StandingBlock(
                            block.name(), block.heatW() / store.blockJPerK(block), junction.temperatureC()));
                }
            }
        }
        return out;
    }

    private Course course(CaseFlow air, double startC) {
        Optional<Steady> loaded = model.solve(machine, air, Nudge.NONE).found();
        Optional<Steady> idle = model.solve(withoutLoad(), air, Nudge.NONE).found();
        if (loaded.isEmpty() || idle.isEmpty()) {
            double heatW = blocksW(machine) + machine.water().pump().heatW();
            return new Course(startC, heatW / heatCapacityJPerK(), OptionalDouble.empty());
        }
        double endC = loaded.get().water().meanC();
        double conductanceWPerK = blocksW(machine) / (endC - idle.get().water().meanC());
        double timeConstantS = heatCapacityJPerK() / conductanceWPerK;
        return new Course(startC, (endC - startC) / timeConstantS, OptionalDouble.of(timeConstantS));
    }

    private Machine withoutLoad() {
        return Changed.blocks(
                machine,
                machine.water().blocks().stream()
                        .map(b -> new Machine.BlockAt(b.name(), b.part(), b.flow(), 0))
                        .toList());
    }

    private static double blocksW(Machine machine) {
        double sum = 0;
        for (Machine.BlockAt block : machine.water().blocks()) {
            sum += block.heatW();
        }
        return sum;
    }
}

package loopwright.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.fit.FitCase;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.Shape;
import loopwright.loop.Band;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.Steady;
import loopwright.loop.Swings;
import loopwright.loop.air.AirDirection;
import loopwright.rank.LoopHeat;
import loopwright.rank.RatedStacks;
import loopwright.rank.StackAir;

/**
 * What layouts conduct and how warm the coolant gets, with the best parts of each shape at the speed the trade sizes at, and
 * the choice of other parts that heats the coolant least.
 *
 * <p>Each mount blows in or out, whichever way together is coolest.
 */
public final class Cooling {

    private final FitCase fitCase;
    private final RatedStacks rated;
    private final StackAir air;
    private final MachineModel model;
    private final Optional<LoopHeat> heat;
    private final Map<Question, Double> known = new HashMap<>();
    private final Map<Machine, Swings> swings = new HashMap<>();

    /** A layout's machine, cooled the coolest way. */
    public record Cooled(Machine machine, Steady state) {}

    /** Cooling of a case. */
    public Cooling(FitCase fitCase) {
        this.fitCase = fitCase;
        this.model = Sites.model(fitCase);
        this.rated = new RatedStacks(fitCase, model);
        this.air = new StackAir(fitCase);
        this.heat = LoopHeat.least(fitCase);
    }

    private record Question(int mount, Shape shape, ModSet mods) {}

    /** The heat that is reckoned with, W; empty when no choice of parts goes together. */
    public OptionalDouble heatW() {
        return heat.map(h -> OptionalDouble.of(h.coolantW())).orElse(OptionalDouble.empty());
    }

    /** What a stack conducts, W/K. */
    public double conductanceWPerK(Stack stack, ModSet mods) {
        return known.computeIfAbsent(
                new Question(stack.frame().index(), stack.shape(), mods), q -> rated.conductanceWPerK(stack, mods));
    }

    /** What a layout conducts, W/K. */
    public double conductanceWPerK(Layout layout, ModSet mods) {
        double sum = 0;
        for (Stack stack : layout.stacks()) {
            sum += conductanceWPerK(stack, mods);
        }
        return sum;
    }

    /** The coolest way for the air to go; empty when nothing conducts. */
    public Optional<Cooled> coolest(Layout layout, ModSet mods) {
        List<Machine.FanMount> mounts = new ArrayList<>();
        for (Stack stack : layout.stacks()) {
            Optional<Machine.FanMount> best = rated.best(stack, mods);
            if (best.isEmpty() || heat.isEmpty()) {
                return Optional.empty();
            }
            mounts.add(best.get());
        }
        List<Machine.Vent> vents = air.vents(StackAir.used(layout.stacks()), mods);
        Optional<Cooled> coolest = Optional.empty();
        for (int bits = 0; bits < 1 << mounts.size(); bits++) {
            Machine machine = new Machine(
                    model.site(),
                    blowing(mounts, bits),
                    vents,
                    heat.get().water(),
                    heat.get().caseW());
            Optional<Steady> state = model.solve(machine).found();
            if (state.isPresent()
                    && (coolest.isEmpty()
                            || state.get().coolantOverRoomK()
                                    < coolest.get().state().coolantOverRoomK())) {
                coolest = Optional.of(new Cooled(machine, state.get()));
            }
        }
        return coolest;
    }

    private static List<Machine.FanMount> blowing(List<Machine.FanMount> mounts, int bits) {
        List<Machine.FanMount> out = new ArrayList<>();
        for (int i = 0; i < mounts.size(); i++) {
            out.add(mounts.get(i).blowing((bits >> i & 1) == 0 ? AirDirection.IN : AirDirection.OUT));
        }
        return out;
    }

    /** Coolant over room, K. */
    public double overRoomK(Cooled cooled) {
        return cooled.state().coolantOverRoomK();
    }

    /** The band that coolant over room lies in. */
    public Band band(Cooled cooled) {
        return swings(cooled).band(Steady::coolantOverRoomK);
    }

    /** How much cooler one is than another, with what both share counted once. */
    public Band gainBand(Cooled before, Cooled after) {
        return swings(before).less(swings(after), Steady::coolantOverRoomK);
    }

    private Swings swings(Cooled cooled) {
        return swings.computeIfAbsent(cooled.machine(), m -> Swings.of(model, m));
    }

    /** The case that was asked about. */
    FitCase fitCase() {
        return fitCase;
    }
}

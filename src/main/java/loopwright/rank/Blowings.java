package loopwright.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.Shape;
import loopwright.loop.Duty;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.MountSound;
import loopwright.loop.Nudge;
import loopwright.loop.air.AirDirection;
import org.jspecify.annotations.Nullable;

/** Every way to fit real parts to a stack and let them blow; each worked out once and kept. */
final class Blowings {

    private final FitCase fitCase;
    private final MachineModel model;
    private final StackAir air;
    private final WaterReach water;
    private final int stepPercent;
    private final Map<Place, MountAirNumber> airs = new HashMap<>();
    private final Map<Machine.MountAir, MountAirNumber> numbers = new HashMap<>();
    private final Map<Shape, Integer> alike = new HashMap<>();
    private final Map<String, Integer> alikeByParts = new HashMap<>();
    private final Map<Question, Slots> slots = new HashMap<>();
    private final Map<Machine.FanMount, Draught> draughts = new HashMap<>();

    Blowings(FitCase fitCase, MachineModel model, WaterReach water) {
        this.fitCase = fitCase;
        this.model = model;
        this.air = new StackAir(fitCase);
        this.water = water;
        this.stepPercent = fitCase.brief().terms().dutyStepPercent();
    }

    /** What the air meets, and a number that tells it from others quickly. */
    private record MountAirNumber(Machine.MountAir air, int number) {}

    private record Place(int mount, Shape shape, ModSet mods) {}

    private record Question(int mount, int parts, int air, AirDirection direction) {}

    /**
     * What can be fitted to a stack, and the best of it, each figure by itself.
     *
     * @param probes the cheapest and the one that conducts most: what a first look takes
     */
    record Slot(List<Blowing> all, List<Blowing> probes, Floor floor) {

        static Slot of(List<Blowing> all) {
            Blowing cheapest = all.get(0);
            Blowing most = all.get(0);
            for (Blowing one : all) {
                cheapest = one.fitting().cents() < cheapest.fitting().cents() ? one : cheapest;
                most = conducts(one) > conducts(most) ? one : most;
            }
            return new Slot(
                    List.copyOf(all), cheapest == most ? List.of(cheapest) : List.of(cheapest, most), Floor.of(all));
        }

        private static double conducts(Blowing one) {
            return one.draught().conductanceWPerK(PressureSteps.middle());
        }
    }

    /** What can be fitted to a stack at each duty, made when it is asked for. */
    final class Slots {
        private final Stack stack;
        private final AirDirection direction;
        private final Machine.MountAir meets;
        private final @Nullable Slot[] byDuty = new @Nullable Slot[Bounds.FULL_PERCENT + 1];

        private Slots(Stack stack, AirDirection direction, Machine.MountAir meets) {
            this.stack = stack;
            this.direction = direction;
            this.meets = meets;
        }

        Slot at(int dutyPercent) {
            Slot known = byDuty[dutyPercent];
            if (known == null) {
                known = make(stack, direction, meets, dutyPercent);
                byDuty[dutyPercent] = known;
            }
            return known;
        }
    }

    /** The slots of a stack that blows some way, with a mod set. */
    Slots slots(Stack stack, AirDirection direction, ModSet mods) {
        int mount = stack.frame().index();
        MountAirNumber meets = airs.computeIfAbsent(new Place(mount, stack.shape(), mods), p -> meets(stack, mods));
        int parts = alike.computeIfAbsent(
                stack.shape(),
                s -> alikeByParts.computeIfAbsent(
                        s.outline().text() + "/" + s.fanThickness().valueHmm() + "/"
                                + s.arrangement().fanLayers(),
                        t -> alikeByParts.size()));
        return slots.computeIfAbsent(
                new Question(mount, parts, meets.number(), direction), q -> new Slots(stack, direction, meets.air()));
    }

    private MountAirNumber meets(Stack stack, ModSet mods) {
        Machine.MountAir meets = air.at(
                stack.frame().mount(),
                stack.shape().pattern(),
                stack.shape().fanThickness().valueHmm(),
                mods);
        MountAirNumber known = numbers.get(meets);
        if (known == null) {
            known = new MountAirNumber(meets, numbers.size());
            numbers.put(meets, known);
        }
        return known;
    }

    private Slot make(Stack stack, AirDirection direction, Machine.MountAir meets, int dutyPercent) {
        List<Blowing> all = new ArrayList<>();
        for (Fan fan : fitCase.shapes().fansOf(stack.shape())) {
            if (!stack.shape().arrangement().hasRadiator()) {
                all.add(blowing(Fitting.of(stack, Optional.empty(), fan), direction, meets, dutyPercent));
            }
            for (Radiator radiator : fitCase.shapes().radiatorsOf(stack.shape())) {
                all.add(blowing(Fitting.of(stack, Optional.of(radiator), fan), direction, meets, dutyPercent));
            }
        }
        return Slot.of(all);
    }

    /** Parts at work on their mount, with a mod set. */
    Blowing one(Workbench.Placed placed, ModSet mods, int dutyPercent) {
        Machine.MountAir meets = meets(placed.fitting().stack(), mods).air();
        return blowing(placed.fitting(), placed.direction(), meets, dutyPercent);
    }

    private Blowing blowing(Fitting fitting, AirDirection direction, Machine.MountAir meets, int dutyPercent) {
        Stack stack = fitting.stack();
        int row = stack.shape().pattern().fans();
        Machine.Fans fans = new Machine.Fans(fitting.fan(), row, fitting.fans() / row, new Duty(dutyPercent));
        Machine.FanMount mount = new Machine.FanMount(
                stack.frame().mount().id(),
                direction,
                fans,
                meets,
                fitting.radiator().map(r -> air.radiator(stack.frame().mount(), r)));
        Duty faster = new Duty(Math.min(Bounds.FULL_PERCENT, dutyPercent + stepPercent));
        Blowing.Loudness loudness = new Blowing.Loudness(MountSound.of(mount), MountSound.of(mount.at(faster)));
        return new Blowing(fitting, mount, model.branch(mount, Nudge.NONE), draught(fitting, mount), loudness);
    }

    /** The draught of a mount's parts, which both ways to blow share. */
    private Draught draught(Fitting fitting, Machine.FanMount mount) {
        Machine.FanMount outwards = mount.blowing(AirDirection.OUT);
        return draughts.computeIfAbsent(
                outwards,
                o -> new Draught(
                        o,
                        model.branch(o, Nudge.NONE),
                        model,
                        fitting.radiator().map(water::sideWPerK).orElse(0.0)));
    }
}

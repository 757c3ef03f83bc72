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
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirDirection;
import loopwright.loop.air.FanBank;

/** Every way to fit real parts to a stack and let them blow; each worked out once and kept. */
final class Blowings {

    private final FitCase fitCase;
    private final MachineModel model;
    private final StackAir air;
    private final WaterReach water;
    private final Map<Place, MountAirNumber> airs = new HashMap<>();
    private final Map<Machine.MountAir, MountAirNumber> numbers = new HashMap<>();
    private final Map<Shape, Integer> alike = new HashMap<>();
    private final Map<String, Integer> alikeByParts = new HashMap<>();
    private final Map<Question, Slot> slots = new HashMap<>();
    private final Map<Integer, Double> shutOffsPa = new HashMap<>();

    Blowings(FitCase fitCase, MachineModel model, WaterReach water) {
        this.fitCase = fitCase;
        this.model = model;
        this.air = new StackAir(fitCase);
        this.water = water;
    }

    /** What the air meets, and a number that tells it from others quickly. */
    private record MountAirNumber(Machine.MountAir air, int number) {}

    private record Place(int mount, Shape shape, ModSet mods) {}

    private record Question(int mount, int parts, int air, AirDirection direction, int dutyPercent) {}

    /** What can be fitted to a stack, and the best of it, each figure by itself. */
    record Slot(List<Blowing> all, Floor floor) {}

    /** The slot of a stack that blows some way at a duty, with a mod set. */
    Slot slot(Stack stack, AirDirection direction, ModSet mods, int dutyPercent) {
        int mount = stack.frame().index();
        MountAirNumber meets = airs.computeIfAbsent(new Place(mount, stack.shape(), mods), p -> meets(stack, mods));
        int parts = alike.computeIfAbsent(
                stack.shape(),
                s -> alikeByParts.computeIfAbsent(
                        s.outline().text() + "/" + s.fanThickness().valueHmm() + "/"
                                + s.arrangement().fanLayers(),
                        t -> alikeByParts.size()));
        return slots.computeIfAbsent(
                new Question(mount, parts, meets.number(), direction, dutyPercent),
                q -> make(stack, direction, meets.air(), dutyPercent));
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
        return new Slot(List.copyOf(all), Floor.of(all));
    }

    /** Parts at work on their mount. */
    Blowing blowing(Fitting fitting, AirDirection direction, Machine.MountAir meets, int dutyPercent) {
        Stack stack = fitting.stack();
        int row = stack.shape().pattern().fans();
        Machine.Fans fans = new Machine.Fans(fitting.fan(), row, fitting.fans() / row, new Duty(dutyPercent));
        Machine.FanMount mount = new Machine.FanMount(
                stack.frame().mount().id(),
                direction,
                fans,
                meets,
                fitting.radiator().map(r -> air.radiator(stack.frame().mount(), r)));
        double waterSide = fitting.radiator().map(water::sideWPerK).orElse(0.0);
        SoundPower sound = MountSound.of(mount);
        return new Blowing(fitting, mount, new Blowing.Most(helpPa(dutyPercent), waterSide), sound, model);
    }

    /** The most that the pressure inside can help fans: two layers of the strongest fan there is. */
    private double helpPa(int dutyPercent) {
        return shutOffsPa.computeIfAbsent(dutyPercent, d -> {
            double most = 0;
            for (List<Fan> frame : fitCase.shapes().fans().values()) {
                for (Fan fan : frame) {
                    FanBank bank =
                            new FanBank(fan, 1, 2, new Duty(d), model.air().densityKgPerM3());
                    most = Math.max(most, bank.shutOffPa());
                }
            }
            return most;
        });
    }
}

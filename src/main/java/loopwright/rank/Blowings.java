package loopwright.rank;

import java.util.HashMap;
import java.util.Map;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.Shape;
import loopwright.loop.Machine;
import loopwright.loop.MachineModel;
import loopwright.loop.air.AirDirection;

/** Every way to fit real parts to stacks and let them blow; each worked out once and kept. */
final class Blowings {

    private final FitCase fitCase;
    private final MachineModel model;
    private final StackAir air;
    private final WaterReach water;
    private final int stepPercent;
    private final LoopFittings fittings;
    private final AirMods airMods;
    private final Map<Place, MountAirNumber> airs = new HashMap<>();
    private final Map<Machine.MountAir, MountAirNumber> numbers = new HashMap<>();
    private final Map<Shape, Integer> alike = new HashMap<>();
    private final Map<String, Integer> alikeByParts = new HashMap<>();
    private final Map<Question, MountFits> fits = new HashMap<>();

    Blowings(FitCase fitCase, MachineModel model, WaterReach water) {
        this.fitCase = fitCase;
        this.model = model;
        this.air = new StackAir(fitCase);
        this.water = water;
        this.airMods = new AirMods(fitCase.chassis());
        this.stepPercent = fitCase.brief().terms().dutyStepPercent();
        this.fittings = LoopFittings.of(fitCase);
    }

    /** What the air meets, and a number that tells it from others quickly. */
    private record MountAirNumber(Machine.MountAir air, int number) {}

    private record Place(int mount, Shape shape, ModSet mods) {}

    private record Question(int mount, int parts, int air) {}

    /** The slots of a stack that blows some way, with a mod set. */
    MountFits.Slots slots(Stack stack, AirDirection direction, ModSet mods) {
        return fits(stack, mods).slots(direction);
    }

    private MountFits fits(Stack stack, ModSet mods) {
        int mount = stack.frame().index();
        MountAirNumber meets = airs.computeIfAbsent(
                new Place(mount, stack.shape(), airMods.at(mount, mods)), p -> meets(stack, p.mods()));
        int parts = alike.computeIfAbsent(
                stack.shape(),
                s -> alikeByParts.computeIfAbsent(
                        s.outline().text() + "/" + s.fanThickness().valueHmm() + "/"
                                + s.arrangement().fanLayers(),
                        t -> alikeByParts.size()));
        return fits.computeIfAbsent(
                new Question(mount, parts, meets.number()),
                q -> new MountFits(
                        stack,
                        new MountFits.Surroundings(fitCase, model, water, meets.air(), air, stepPercent, fittings)));
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

    /** Parts at work on their mount, with a mod set. */
    Blowing one(Workbench.Placed placed, ModSet mods, int dutyPercent) {
        MountFits all = fits(placed.fitting().stack(), mods);
        return all.blowing(all.indexOf(placed.fitting()), placed.direction(), dutyPercent);
    }
}

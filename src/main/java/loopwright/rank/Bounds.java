package loopwright.rank;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.Shapes;
import loopwright.loop.CoolingBound;
import loopwright.loop.MachineModel;
import loopwright.loop.air.AirDirection;
import loopwright.rank.AirPlans.AirPlan;

/**
 * Bounds of builds before everything is picked: no build of the kind is better in any figure.
 *
 * <p>Temperatures: {@link AirBounds} and {@link CoolingBound}.
 */
final class Bounds {

    /** Full duty, percent. */
    static final int FULL_PERCENT = 100;

    /** Slack below a computed bound, K: far above rounding errors of a few additions, far below a hundredth. */
    private static final double SLACK_K = 1e-6;

    private final Blowings blowings;
    private final Costing costing;
    private final Shapes shapes;
    private final List<Integer> duties;

    Bounds(FitCase fitCase, Blowings blowings) {
        this.blowings = blowings;
        this.shapes = fitCase.shapes();
        this.costing = new Costing(fitCase.brief().terms());
        this.duties = duties(fitCase.brief().terms().dutyStepPercent());
    }

    /**
     * Bounds of all builds of a case.
     *
     * @param warmC warmest mean temperature that the coolant may have
     */
    static Bounds of(FitQuery query, List<Core> cores, MachineModel model, double warmC) {
        WaterReach water = new WaterReach(
                model, cores.stream().map(c -> c.heat().water()).distinct().toList(), warmC);
        return new Bounds(query.fitCase(), new Blowings(query.fitCase(), model, water));
    }

    /** Real parts by shape. */
    Shapes shapes() {
        return shapes;
    }

    private static List<Integer> duties(int step) {
        List<Integer> out = new ArrayList<>();
        for (int duty = FULL_PERCENT; duty > 0; duty -= step) {
            out.add(duty);
        }
        return List.copyOf(out);
    }

    /** The grid of duties, full duty first. */
    List<Integer> dutiesPercent() {
        return duties;
    }

    /** The same grid, least duty first: for whoever looks for the quietest. */
    List<Integer> dutiesSlowFirst() {
        List<Integer> out = new ArrayList<>(duties);
        Collections.reverse(out);
        return out;
    }

    /** A core with the best figures of all, each by itself. */
    static Core ideal(List<Core> cores) {
        Core best = cores.get(0);
        for (Core core : cores) {
            best = new Core(
                    best.chosen(),
                    best.room(),
                    Math.min(best.cents(), core.cents()),
                    new LoopHeat(
                            best.heat().water(),
                            Math.min(best.heat().coolantW(), core.heat().coolantW()),
                            Math.min(best.heat().caseW(), core.heat().caseW())),
                    best.sound().compareTo(core.sound()) <= 0 ? best.sound() : core.sound(),
                    Math.min(best.leadDays(), core.leadDays()));
        }
        return best;
    }

    /** What can be fitted to a plan's stacks. */
    List<MountFits.Slots> slots(AirPlan plan, ModSet mods) {
        List<MountFits.Slots> out = new ArrayList<>(plan.stacks().size());
        for (int i = 0; i < plan.stacks().size(); i++) {
            out.add(blowings.slots(plan.stacks().get(i), plan.directions().get(i), mods));
        }
        return out;
    }

    /** The bound of a plan with some floors, in the air that the openings leave. */
    Goal.Bound of(Core core, Build.Done done, AirPlan plan, List<Floor> floors, AirBounds air) {
        return at(core, done, floors, air.leastOverRoomK(core, plan.directions(), floors));
    }

    /** The bound of some stacks at any duty, whatever their air. */
    Goal.Bound ofAnyAir(Core core, Build.Done done, List<Stack> stacks) {
        Goal.Bound full = ofAnyAir(core, done, stacks, duties.get(0));
        Goal.Bound least = ofAnyAir(core, done, stacks, duties.get(duties.size() - 1));
        return new Goal.Bound(
                full.priceCents(),
                full.coolantOverRoomCentiK(),
                least.soundMillionths(),
                full.labourMin(),
                full.days());
    }

    /** The bound of some stacks at a duty, whatever their air: all helped, all breathing the room. */
    Goal.Bound ofAnyAir(Core core, Build.Done done, List<Stack> stacks, int dutyPercent) {
        List<Floor> floors = new ArrayList<>(stacks.size());
        double conductance = 0;
        for (Stack stack : stacks) {
            Floor floor = blowings.slots(stack, AirDirection.IN, done.mods())
                    .at(dutyPercent)
                    .floor();
            floors.add(floor);
            conductance += floor.mostWPerK(PressureSteps.count() - 1);
        }
        return at(core, done, floors, CoolingBound.leastOverRoomK(core.heat().coolantW(), 0, conductance, 0, 0));
    }

    /** The bound with a core, at a temperature. */
    Goal.Bound at(Core core, Build.Done done, List<Floor> floors, double leastOverRoomK) {
        long cents = core.cents() + done.takes().workCents();
        long sound = core.sound().millionths();
        int lead = core.leadDays();
        for (Floor floor : floors) {
            cents += floor.figures().cents();
            sound += floor.figures().soundMillionths();
            lead = Math.max(lead, floor.figures().leadDays());
        }
        return new Goal.Bound(
                costing.priceCents(cents),
                Centi.of(leastOverRoomK - SLACK_K),
                sound,
                done.takes().labourMin(),
                done.days(lead));
    }
}

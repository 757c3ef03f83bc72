package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.loop.CoolingBound;
import loopwright.loop.air.AirDirection;
import loopwright.rank.AirPlans.AirPlan;

/**
 * Bounds of builds before everything is picked: no build of the kind is better in any figure.
 *
 * <p>Temperatures: {@link CoolingBound} says what upper bounds of conductances and of the air give. Either the pressure inside
 * is at least the room's: then mounts that blow in do no more than alone, and all air comes in by them; or it is below: then
 * those that blow out do no more than alone, and all air leaves by them. The lower of the two counts.
 */
final class Bounds {

    /** Full duty, percent. */
    private static final int FULL_PERCENT = 100;

    /** Slack below a computed bound, K: far above rounding errors of a few additions, far below a hundredth. */
    private static final double SLACK_K = 1e-6;

    private final Blowings blowings;
    private final Costing costing;
    private final List<Integer> duties;

    Bounds(FitCase fitCase, Blowings blowings) {
        this.blowings = blowings;
        this.costing = new Costing(fitCase.brief().terms());
        this.duties = duties(fitCase.brief().terms().dutyStepPercent());
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

    /** The floors of a plan's stacks at a duty. */
    List<Floor> floors(AirPlan plan, ModSet mods, int dutyPercent) {
        List<Floor> out = new ArrayList<>(plan.stacks().size());
        for (int i = 0; i < plan.stacks().size(); i++) {
            out.add(blowings.slot(plan.stacks().get(i), plan.directions().get(i), mods, dutyPercent)
                    .floor());
        }
        return out;
    }

    /** The bound of a plan at any duty: the air of full duty, the sound of the least. */
    Goal.Bound ofPlan(Core core, Build.Done done, AirPlan plan) {
        List<Floor> full = floors(plan, done.mods(), duties.get(0));
        List<Floor> least = floors(plan, done.mods(), duties.get(duties.size() - 1));
        List<Floor> any = new ArrayList<>(full.size());
        for (int i = 0; i < full.size(); i++) {
            any.add(full.get(i).asQuietAs(least.get(i)));
        }
        return of(core, done, plan.directions(), any);
    }

    /** The bound of a plan with some floors. */
    Goal.Bound of(Core core, Build.Done done, List<AirDirection> directions, List<Floor> floors) {
        Sums in = Sums.of(directions, floors, AirDirection.IN);
        Sums out = Sums.of(directions, floors, AirDirection.OUT);
        double pressed = in.mounts() == 0
                ? Double.POSITIVE_INFINITY
                : leastK(core, in.aloneWPerK(), out.helpedWPerK(), in.aloneAirWPerK());
        double drawn = out.mounts() == 0
                ? Double.POSITIVE_INFINITY
                : leastK(core, in.helpedWPerK(), out.aloneWPerK(), out.aloneAirWPerK());
        return at(core, done, floors, Math.min(pressed, drawn));
    }

    private static double leastK(Core core, double inWPerK, double outWPerK, double airWPerK) {
        return CoolingBound.leastOverRoomK(core.heat().coolantW(), core.heat().caseW(), inWPerK, outWPerK, airWPerK);
    }

    private record Sums(int mounts, double aloneWPerK, double helpedWPerK, double aloneAirWPerK) {

        static Sums of(List<AirDirection> directions, List<Floor> floors, AirDirection direction) {
            int mounts = 0;
            double alone = 0;
            double helped = 0;
            double air = 0;
            for (int i = 0; i < floors.size(); i++) {
                if (directions.get(i) == direction) {
                    mounts++;
                    alone += floors.get(i).alone().conductanceWPerK();
                    helped += floors.get(i).helped().conductanceWPerK();
                    air += floors.get(i).alone().airWPerK();
                }
            }
            return new Sums(mounts, alone, helped, air);
        }
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
            Floor floor = blowings.slot(stack, AirDirection.IN, done.mods(), dutyPercent)
                    .floor();
            floors.add(floor);
            conductance += floor.helped().conductanceWPerK();
        }
        return at(core, done, floors, leastK(core, conductance, 0, 0));
    }

    /** The bound with a core, at a temperature. */
    Goal.Bound at(Core core, Build.Done done, List<Floor> floors, double leastOverRoomK) {
        long cents = core.cents() + done.takes().workCents();
        long sound = core.sound().millionths();
        int lead = core.leadDays();
        for (Floor floor : floors) {
            cents += floor.cents();
            sound += floor.soundMillionths();
            lead = Math.max(lead, floor.leadDays());
        }
        return new Goal.Bound(
                costing.priceCents(cents),
                Centi.of(leastOverRoomK - SLACK_K),
                sound,
                done.takes().labourMin(),
                done.days(lead));
    }
}

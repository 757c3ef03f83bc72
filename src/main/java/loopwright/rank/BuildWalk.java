package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.fit.FitQuery;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.PartSet;
import loopwright.loop.MachineModel;
import loopwright.loop.SoundPower;
import loopwright.loop.material.WettedMetals;
import loopwright.rank.AirPlans.AirPlan;
import loopwright.rank.Vents.Openings;

/**
 * Walks every build of a layout with a mod set: which way each mount blows, duty, radiators and fans, then the other parts.
 *
 * <p>Bounds are the sums of what is cheapest, quietest and does most mount by mount, as if they went together; how those
 * bound a temperature is derived in {@link CoolingBound}. Once radiators and fans are picked, their air is exact, and what is
 * left open is the loop alone.
 */
final class BuildWalk {

    private final FitQuery query;
    private final List<Core> cores;
    private final Core ideal;
    private final Core loudest;
    private final double leastDutyMost;
    private final Thermal thermal;
    private final Vents vents;
    private final AirPlans plans;
    private final Bounds bounds;
    private final BuildLimits limits;

    /**
     * What builds must keep, and their temperatures.
     *
     * @param thermal made with what parts and the air inside may reach; it keeps what it has worked out
     */
    record Rules(BuildLimits limits, Thermal thermal) {}

    BuildWalk(FitQuery query, List<Core> cores, Bounds bounds, Rules rules, MachineModel model) {
        this.query = query;
        this.cores = cores;
        this.ideal = Bounds.ideal(cores);
        this.leastDutyMost = query.fitCase().shapes().fans().values().stream()
                .flatMap(List::stream)
                .mapToDouble(f -> f.air().dutyMinPercent())
                .max()
                .orElse(0);
        this.loudest = cores.stream().max(Comparator.comparing(Core::sound)).orElseThrow();
        this.thermal = rules.thermal();
        this.vents = new Vents(query.fitCase(), model);
        this.plans = new AirPlans(query);
        this.bounds = bounds;
        this.limits = rules.limits();
    }

    /**
     * What one walk is about.
     *
     * @param parts what they take, as text
     * @param layouts those that take the same parts on the same mounts
     */
    private record Task(String parts, List<Layout> layouts, Build.Done done, Goal goal, Look look) {
        ModSet mods() {
            return done.mods();
        }
    }

    /** Stacks that blow, at a duty, and the layouts that stand with parts of each room, found when they are needed. */
    private record Turn(Task task, Fanned fanned, int dutyPercent) {
        AirPlan plan() {
            return fanned.plan();
        }

        AirBounds air() {
            return fanned.openings().bounds(dutyPercent);
        }
    }

    /** A plan with what can be fitted to its stacks, and the openings it leaves. */
    private record Fanned(AirPlan plan, List<MountFits.Slots> slots, Openings openings, Standing standing) {}

    /** Layouts that stand, by the room that parts take. */
    private record Standing(Map<PartSet, List<Layout>> byRoom) {}

    /** How closely builds are looked at. */
    enum Look {
        /** At a few likely parts: to have something that beats others early. */
        FIRST,
        /** At every part. */
        WHOLE
    }

    /** Hands every build that can matter to the goal; at a first look, some of them. */
    void walk(List<FoundLayout> alike, Build.Done done, Goal goal, Look look) {
        Layout first = alike.get(0).layout();
        String parts = first.partsText();
        List<Stack> stacks = first.stacks();
        Task task = new Task(parts, List.of(first), done, goal, look);
        if (hopeless(task, bounds.ofAnyAir(ideal, done, stacks))) {
            return;
        }
        Task mayStand = new Task(parts, mayStand(alike, done.mods()), done, goal, look);
        for (AirPlan plan : plans.of(stacks, done.mods())) {
            duties(mayStand, plan);
        }
    }

    private static List<Layout> mayStand(List<FoundLayout> alike, ModSet set) {
        return alike.stream()
                .filter(f -> f.needed().stream().anyMatch(n -> n.isSubsetOf(set)))
                .map(FoundLayout::layout)
                .toList();
    }

    private void duties(Task task, AirPlan plan) {
        Fanned fanned = new Fanned(
                plan,
                bounds.slots(plan, task.mods()),
                vents.of(plan.stacks(), task.mods()),
                new Standing(new HashMap<>()));
        for (int duty : task.goal().wantsEveryDuty() ? bounds.dutiesSlowFirst() : bounds.dutiesPercent()) {
            List<Floor> floors = new ArrayList<>(fanned.slots().size());
            for (MountFits.Slots slots : fanned.slots()) {
                floors.add(slots.at(duty).floor());
            }
            Turn turn = new Turn(task, fanned, duty);
            if (isWorthIt(turn, floors)) {
                pick(turn, List.of(), floors);
            }
        }
    }

    private boolean isWorthIt(Turn turn, List<Floor> floors) {
        return !isTooSlow(turn.task(), turn.dutyPercent(), loudest, floors)
                && !hopeless(turn.task(), bounds.at(ideal, turn.task().done(), floors, 0))
                && !hopeless(turn.task(), bounds.of(ideal, turn.task().done(), turn.plan(), floors, turn.air()));
    }

    private void pick(Turn turn, List<Blowing> picked, List<Floor> floors) {
        int at = picked.size();
        if (at == turn.plan().stacks().size()) {
            air(turn, Airing.of(picked, turn.dutyPercent()), floors);
            return;
        }
        Slot slot = turn.fanned().slots().get(at).at(turn.dutyPercent());
        for (Blowing one : turn.task().look() == Look.FIRST ? slot.probes() : slot.all()) {
            List<Blowing> more = new ArrayList<>(picked);
            more.add(one);
            List<Floor> tighter = new ArrayList<>(floors);
            tighter.set(at, one.floor());
            if (!metals(more).mixes() && isWorthIt(turn, tighter)) {
                pick(turn, more, tighter);
            }
        }
    }

    /** All radiators and fans are picked: their air is exact now. */
    private void air(Turn turn, Airing airing, List<Floor> floors) {
        Task task = turn.task();
        Thermal.InAir inAir = thermal.inAir(airing, turn.fanned().openings());
        double idealK =
                inAir.leastOverRoomK(ideal.heat().coolantW(), ideal.heat().caseW());
        if (hopeless(task, bounds.at(ideal, task.done(), floors, idealK))) {
            return;
        }
        WettedMetals metals = metals(airing.blowings());
        for (Core core : cores) {
            if (core.metals().and(metals).mixes() || isTooSlow(task, turn.dutyPercent(), core, floors)) {
                continue;
            }
            double leastK =
                    inAir.leastOverRoomK(core.heat().coolantW(), core.heat().caseW());
            Goal.Bound bound = bounds.at(core, task.done(), floors, leastK);
            if (!hopeless(task, bound)) {
                core(turn, airing, core, inAir, bound);
            }
        }
    }

    private static WettedMetals metals(List<Blowing> picked) {
        return WettedMetals.ofRadiators(
                picked.stream().flatMap(b -> b.fitting().radiator().stream()).toList());
    }

    private void core(Turn turn, Airing airing, Core core, Thermal.InAir inAir, Goal.Bound bound) {
        Task task = turn.task();
        Optional<Integer> centiK = inAir.overRoomCentiK(core.heat());
        if (centiK.isEmpty()) {
            return;
        }
        Build.Outcome outcome = new Build.Outcome(
                bound.priceCents(),
                centiK.get(),
                new SoundPower(bound.soundMillionths()),
                bound.labourMin(),
                bound.days());
        if (!limits.allow(outcome) || task.goal().isHopeless(task.parts(), Goal.Bound.of(outcome))) {
            return;
        }
        List<Layout> standing = turn.fanned()
                .standing()
                .byRoom()
                .computeIfAbsent(core.room(), room -> standing(task, turn.plan(), room));
        for (Layout layout : standing) {
            task.goal().offer(task.parts(), outcome, () -> {
                Build.AtWork work =
                        new Build.AtWork(airing.on(layout), inAir.machine(core.heat()), airing.dutyPercent());
                return new Build(layout, task.done(), core, work, outcome);
            });
        }
    }

    private List<Layout> standing(Task task, AirPlan plan, PartSet room) {
        int own = task.layouts().get(0).stacks().size();
        List<Stack> rows = plan.stacks().subList(own, plan.stacks().size());
        return task.layouts().stream()
                .filter(l -> query.fits(l.stacks(), task.mods(), room))
                .filter(l -> rows.isEmpty() || query.fits(withRows(l.stacks(), rows), task.mods(), room))
                .toList();
    }

    private static List<Stack> withRows(List<Stack> stacks, List<Stack> rows) {
        List<Stack> out = new ArrayList<>(stacks);
        out.addAll(rows);
        return AirPlans.inOrder(out);
    }

    /**
     * Whether every choice could run at the next duty up and still keep the noise limit: then that one is looked at.
     *
     * <p>Only said of duties that no fan is held above by its least: slower is never cooler then. Where some turn slower and
     * others cannot, it may be.
     */
    private boolean isTooSlow(Task task, int dutyPercent, Core core, List<Floor> floors) {
        if (task.goal().wantsEveryDuty() || dutyPercent == Bounds.FULL_PERCENT || dutyPercent < leastDutyMost) {
            return false;
        }
        long faster = core.sound().millionths();
        for (Floor floor : floors) {
            faster += floor.figures().fasterMillionths();
        }
        return faster <= limits.sound().millionths();
    }

    private boolean hopeless(Task task, Goal.Bound bound) {
        return limits.exclude(bound) || task.goal().isHopeless(task.parts(), bound);
    }
}

package loopwright.rank;

import java.util.ArrayList;
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
import loopwright.loop.CoolingBound;
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirDirection;
import loopwright.rank.AirPlans.AirPlan;

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
    private final Blowings blowings;
    private final Thermal thermal;
    private final AirPlans plans;
    private final Bounds bounds;
    private final BuildLimits limits;

    BuildWalk(FitQuery query, List<Core> cores, Blowings blowings, Thermal thermal) {
        this.query = query;
        this.cores = cores;
        this.ideal = Bounds.ideal(cores);
        this.blowings = blowings;
        this.thermal = thermal;
        this.plans = new AirPlans(query);
        this.bounds = new Bounds(query.fitCase(), blowings);
        this.limits = BuildLimits.of(query.fitCase().brief().limits());
    }

    /**
     * What one walk is about.
     *
     * @param parts what they take, as text
     * @param layouts those that take the same parts on the same mounts
     */
    private record Task(String parts, List<Layout> layouts, Build.Done done, Goal goal) {
        ModSet mods() {
            return done.mods();
        }
    }

    /** Stacks that blow, at a duty, and the layouts that stand with parts of each room, found when they are needed. */
    private record Turn(Task task, AirPlan plan, int dutyPercent, Map<PartSet, List<Layout>> standing) {}

    /** Hands every build that can matter to the goal. */
    void walk(String parts, List<FoundLayout> alike, Build.Done done, Goal goal) {
        Layout first = alike.get(0).layout();
        List<Stack> stacks = first.stacks();
        Task task = new Task(parts, List.of(first), done, goal);
        if (hopeless(task, bounds.ofAnyAir(ideal, done, stacks))) {
            return;
        }
        Task mayStand = new Task(parts, mayStand(alike, done.mods()), done, goal);
        for (AirPlan plan : plans.of(stacks, done.mods())) {
            if (!hopeless(mayStand, bounds.ofPlan(ideal, done, plan))) {
                duties(mayStand, plan);
            }
        }
    }

    private static List<Layout> mayStand(List<FoundLayout> alike, ModSet set) {
        return alike.stream()
                .filter(f -> f.needed().stream().anyMatch(n -> n.isSubsetOf(set)))
                .map(FoundLayout::layout)
                .toList();
    }

    private void duties(Task task, AirPlan plan) {
        Map<PartSet, List<Layout>> standing = new HashMap<>();
        for (int duty : bounds.dutiesPercent()) {
            List<Floor> floors = bounds.floors(plan, task.mods(), duty);
            if (!hopeless(task, bounds.of(ideal, task.done(), plan.directions(), floors))) {
                pick(new Turn(task, plan, duty, standing), List.of(), floors);
            }
        }
    }

    private void pick(Turn turn, List<Blowing> picked, List<Floor> floors) {
        int at = picked.size();
        if (at == turn.plan().stacks().size()) {
            air(turn, Airing.of(picked, turn.dutyPercent()), floors);
            return;
        }
        Stack stack = turn.plan().stacks().get(at);
        AirDirection direction = turn.plan().directions().get(at);
        for (Blowing one : blowings.slot(stack, direction, turn.task().mods(), turn.dutyPercent())
                .all()) {
            List<Floor> tighter = new ArrayList<>(floors);
            tighter.set(at, Floor.of(one));
            if (!hopeless(
                    turn.task(),
                    bounds.of(ideal, turn.task().done(), turn.plan().directions(), tighter))) {
                List<Blowing> more = new ArrayList<>(picked);
                more.add(one);
                pick(turn, more, tighter);
            }
        }
    }

    /** All radiators and fans are picked: their air is exact now. */
    private void air(Turn turn, Airing airing, List<Floor> floors) {
        Task task = turn.task();
        Thermal.InAir inAir = thermal.inAir(airing, task.mods());
        for (Core core : cores) {
            double leastK =
                    inAir.leastOverRoomK(core.heat().coolantW(), core.heat().caseW());
            Goal.Bound bound = bounds.at(core, task.done(), floors, leastK);
            if (!hopeless(task, bound)) {
                core(turn, airing, core, inAir, bound);
            }
        }
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
        List<Layout> standing = turn.standing().computeIfAbsent(core.room(), room -> standing(task, turn.plan(), room));
        for (Layout layout : standing) {
            task.goal().offer(task.parts(), outcome, () -> build(task, layout, core, airing, outcome));
        }
    }

    private Build build(Task task, Layout layout, Core core, Airing airing, Build.Outcome outcome) {
        Build.AtWork work = new Build.AtWork(
                airing.on(layout), thermal.machine(airing, core.heat(), task.mods()), airing.dutyPercent());
        return new Build(layout, task.done(), core, work, outcome);
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

    private boolean hopeless(Task task, Goal.Bound bound) {
        return limits.exclude(bound) || task.goal().isHopeless(task.parts(), bound);
    }

    /** What a layout that could be had for less than a price fails by; empty when none could. */
    Optional<String> whyNotCheaper(Layout layout, List<Build.Done> ways, long priceCents) {
        Optional<String> why = Optional.empty();
        for (Build.Done done : ways) {
            for (int duty : bounds.dutiesPercent()) {
                Goal.Bound bound = bounds.ofAnyAir(ideal, done, layout.stacks(), duty);
                if (bound.priceCents() < priceCents) {
                    String reason = limits.firstBroken(bound);
                    // The coolest duty comes first. Too loud there and too hot once quiet is too loud once cool enough.
                    boolean loud = why.filter(BuildLimits.TOO_LOUD::equals).isPresent();
                    if (why.isEmpty() || (loud && !reason.equals(BuildLimits.TOO_HOT))) {
                        why = Optional.of(reason);
                    }
                }
            }
        }
        return why;
    }
}

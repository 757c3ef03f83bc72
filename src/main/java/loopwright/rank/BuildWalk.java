package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.fit.FitQuery;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.loop.CoolingCase;
import loopwright.loop.CoolingModel;
import loopwright.loop.SectionRate;
import loopwright.loop.SoundPower;
import loopwright.rank.Chances.Chance;
import loopwright.rank.Fittings.Floor;
import loopwright.rank.Fittings.Slot;

/**
 * Walks every build of a layout with a mod set: parts, which mount blows out, fan duty.
 *
 * <p>Air has to leave by fans: exactly one mount blows out, a radiator's or a bare row's; more than one is hotter and
 * never cheaper. Bounds are the sums of what is cheapest, coolest and quietest mount by mount, as if they went
 * together; a sum of conductances breathing room air is an upper bound of what any choice conducts.
 */
final class BuildWalk {

    /** Slack below a computed bound, K: far above rounding errors of a few additions, far below a hundredth. */
    private static final double SLACK_K = 1e-9;

    private static final double CENTI = 100;

    private final FitQuery query;
    private final List<Core> cores;
    private final Fittings fittings;
    private final Core ideal;
    private final CoolingModel model;
    private final Costing costing;
    private final BuildLimits limits;

    BuildWalk(FitQuery query, List<Core> cores, CoolingModel model) {
        this.query = query;
        this.cores = cores;
        this.ideal = ideal(cores);
        this.fittings = new Fittings(query.fitCase());
        this.model = model;
        this.costing = new Costing(query.fitCase().brief().terms());
        this.limits = BuildLimits.of(query.fitCase().brief().limits());
    }

    /** A core with the best figures of all, each by itself; only for bounds. */
    private static Core ideal(List<Core> cores) {
        Core best = cores.get(0);
        for (Core core : cores) {
            best = new Core(
                    best.chosen(),
                    best.room(),
                    Math.min(best.cents(), core.cents()),
                    Math.min(best.heatW(), core.heatW()),
                    best.sound().compareTo(core.sound()) <= 0 ? best.sound() : core.sound(),
                    Math.min(best.leadDays(), core.leadDays()));
        }
        return best;
    }

    /** What one walk is about. */
    private record Task(List<Layout> layouts, Build.Done done, Goal goal) {
        /** The stacks of the first; those of the others take the same parts. */
        List<Stack> stacks() {
            return layouts.get(0).stacks();
        }
    }

    /**
     * Stacks to fit parts to, and the one that blows out.
     *
     * @param layouts the layouts that can be had so
     */
    private record Airflow(List<Stack> stacks, int exhaust, List<Layout> layouts) {}

    /** Hands every build that can matter to the goal. */
    void walk(List<FoundLayout> alike, Chance chance, Build.Done done, Goal goal) {
        List<Layout> all = alike.stream().map(FoundLayout::layout).toList();
        if (hopeless(
                new Task(all, done, goal), ideal, fittings.atAnyDuty(all.get(0).stacks(), done.mods()))) {
            return;
        }
        List<Layout> layouts = List.of();
        for (int duty : fittings.dutiesPercent()) {
            List<Floor> floors = floors(all.get(0).stacks(), done.mods(), duty);
            if (hopeless(new Task(all, done, goal), ideal, floors)) {
                continue;
            }
            layouts = layouts.isEmpty() ? Chances.mayFit(alike, done.mods()) : layouts;
            Task task = new Task(layouts, done, goal);
            for (Core core : cores) {
                if (!hopeless(task, core, floors)) {
                    airflows(task, chance, core).forEach(a -> pick(task, core, a, duty));
                }
            }
        }
    }

    private List<Floor> floors(List<Stack> stacks, ModSet mods, int duty) {
        List<Floor> out = new ArrayList<>(stacks.size());
        for (Stack stack : stacks) {
            out.add(fittings.of(stack, mods, duty).floor());
        }
        return out;
    }

    private boolean hopeless(Task task, Core core, List<Floor> floors) {
        Goal.Bound bound = bound(task.done(), core, floors);
        return limits.exclude(bound) || task.goal().isHopeless(task.layouts(), bound);
    }

    private Goal.Bound bound(Build.Done done, Core core, List<Floor> floors) {
        long cents = core.cents() + done.takes().workCents();
        double conductance = 0;
        long sound = core.sound().millionths();
        int lead = core.leadDays();
        for (Floor floor : floors) {
            cents += floor.cents();
            conductance += floor.conductanceWPerK();
            sound += floor.soundMillionths();
            lead = Math.max(lead, floor.leadDays());
        }
        return new Goal.Bound(
                costing.priceCents(cents),
                centi(conductance > 0 ? core.heatW() / conductance - SLACK_K : Integer.MAX_VALUE / CENTI),
                sound,
                done.takes().labourMin(),
                done.days(lead));
    }

    /** What a layout that could be had for less than a price fails by; empty when none could. */
    Optional<String> whyNotCheaper(Layout layout, List<Build.Done> ways, long priceCents) {
        Optional<String> why = Optional.empty();
        for (Build.Done done : ways) {
            for (int duty : fittings.dutiesPercent()) {
                Goal.Bound bound = bound(done, ideal, floors(layout.stacks(), done.mods(), duty));
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

    private static int centi(double kelvin) {
        return (int) Math.min(Integer.MAX_VALUE, Math.floor(kelvin * CENTI + 0.5));
    }

    private List<Airflow> airflows(Task task, Chance chance, Core core) {
        List<Airflow> out = new ArrayList<>();
        List<Layout> standing = task.layouts().stream()
                .filter(l -> query.fits(l.stacks(), task.done().mods(), core.room()))
                .toList();
        if (standing.isEmpty()) {
            return out;
        }
        if (chance.fansOn().isEmpty()) {
            for (int i = 0; i < task.stacks().size(); i++) {
                out.add(new Airflow(task.stacks(), i, standing));
            }
        }
        for (MountFrame frame : query.fitCase().frames()) {
            boolean free = task.stacks().stream().noneMatch(s -> s.frame().index() == frame.index());
            boolean asked = chance.fansOn().isEmpty()
                    || chance.fansOn().get().equals(frame.mount().id());
            if (free && asked) {
                for (Stack row : query.fanRows(frame, task.done().mods())) {
                    addIfFits(out, task, core, row, standing);
                }
            }
        }
        return out;
    }

    private void addIfFits(List<Airflow> out, Task task, Core core, Stack row, List<Layout> standing) {
        List<Layout> withRow = standing.stream()
                .filter(l -> query.fits(inOrder(l.stacks(), row), task.done().mods(), core.room()))
                .toList();
        if (!withRow.isEmpty()) {
            List<Stack> rowLast = new ArrayList<>(task.stacks());
            rowLast.add(row);
            out.add(new Airflow(List.copyOf(rowLast), rowLast.size() - 1, withRow));
        }
    }

    private static List<Stack> inOrder(List<Stack> stacks, Stack row) {
        List<Stack> out = new ArrayList<>(stacks);
        out.add(row);
        out.sort((a, b) -> Integer.compare(a.frame().index(), b.frame().index()));
        return out;
    }

    private void pick(Task task, Core core, Airflow airflow, int duty) {
        List<Floor> floors = floors(airflow.stacks(), task.done().mods(), duty);
        if (!hopeless(task, core, floors)) {
            pick(task, core, airflow, duty, List.of(), floors);
        }
    }

    private void pick(Task task, Core core, Airflow airflow, int duty, List<Fitting> picked, List<Floor> floors) {
        if (picked.size() == airflow.stacks().size()) {
            offer(task, core, new Build.Airing(picked, airflow.exhaust(), duty), airflow.layouts());
            return;
        }
        int at = picked.size();
        Stack stack = airflow.stacks().get(at);
        Slot slot = fittings.of(stack, task.done().mods(), duty);
        for (Fitting fitting :
                at == airflow.exhaust() && stack.shape().arrangement().hasRadiator() ? slot.all() : slot.drawingIn()) {
            List<Floor> tighter = new ArrayList<>(floors);
            tighter.set(at, Floor.of(fitting));
            if (!hopeless(task, core, tighter)) {
                List<Fitting> more = new ArrayList<>(picked);
                more.add(fitting);
                pick(task, core, airflow, duty, more, tighter);
            }
        }
    }

    private void offer(Task task, Core core, Build.Airing airing, List<Layout> layouts) {
        Optional<Build.Outcome> outcome = outcome(core, airing, task.done());
        if (outcome.isPresent() && limits.allow(outcome.get())) {
            for (Layout layout : layouts) {
                task.goal()
                        .offer(
                                layout,
                                outcome.get(),
                                () -> new Build(layout, task.done(), core, airing.on(layout), outcome.get()));
            }
        }
    }

    private Optional<Build.Outcome> outcome(Core core, Build.Airing airing, Build.Done done) {
        long cents = core.cents() + done.takes().workCents();
        SoundPower sound = core.sound();
        int lead = core.leadDays();
        List<SectionRate> rates = new ArrayList<>();
        double riseK = query.fitCase().catalog().practice().heat().caseAirRiseK();
        for (int i = 0; i < airing.fittings().size(); i++) {
            Fitting fitting = airing.fittings().get(i);
            cents += fitting.cents();
            sound = sound.plus(fitting.sound());
            lead = Math.max(lead, fitting.leadDays());
            if (fitting.radiator().isPresent()) {
                rates.add(new SectionRate(fitting.conductanceWPerK(), i == airing.exhaust() ? riseK : 0));
            }
        }
        OptionalDouble overRoomK = model.coolantOverRoomK(new CoolingCase(core.heatW(), rates));
        if (overRoomK.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Build.Outcome(
                costing.priceCents(cents),
                centi(overRoomK.getAsDouble()),
                sound,
                done.takes().labourMin(),
                done.days(lead)));
    }
}

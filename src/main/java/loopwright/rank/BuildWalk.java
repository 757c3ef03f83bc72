package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.fit.FitQuery;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.MountFrame;
import loopwright.loop.CoolingCase;
import loopwright.loop.CoolingModel;
import loopwright.loop.SectionRate;
import loopwright.loop.SoundPower;
import loopwright.rank.Chances.Chance;

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
    private final CoolingModel model;
    private final Costing costing;
    private final BuildLimits limits;

    BuildWalk(FitQuery query, List<Core> cores, CoolingModel model) {
        this.query = query;
        this.cores = cores;
        this.fittings = new Fittings(query.fitCase());
        this.model = model;
        this.costing = new Costing(query.fitCase().brief().terms());
        this.limits = BuildLimits.of(query.fitCase().brief().limits());
    }

    /** What one walk is about. */
    private record Task(FoundLayout found, Build.Done done, Goal goal) {
        List<Stack> stacks() {
            return found.layout().stacks();
        }
    }

    /** Stacks to fit parts to, and the one that blows out. */
    private record Airflow(List<Stack> stacks, int exhaust) {}

    /** Hands every build that can matter to the goal. */
    void walk(FoundLayout found, Chance chance, Build.Done done, Goal goal) {
        Task task = new Task(found, done, goal);
        for (int duty : fittings.dutiesPercent()) {
            List<Floor> floors = boundOf(task.stacks(), task, duty);
            for (Core core : cores) {
                if (hopeless(task, core, floors)) {
                    continue;
                }
                if (query.fits(task.stacks(), done.mods(), core.room())) {
                    airflows(task, chance, core).forEach(a -> pick(task, core, a, duty));
                }
            }
        }
    }

    /** The best that the parts of one stack can be, each figure by itself. */
    private record Floor(long cents, double conductanceWPerK, long soundMillionths, int leadDays) {}

    private List<Floor> boundOf(List<Stack> stacks, Task task, int duty) {
        List<Floor> out = new ArrayList<>();
        for (Stack stack : stacks) {
            List<Fitting> all = fittings.of(stack, task.done().mods(), duty, false);
            out.add(new Floor(
                    all.stream().mapToLong(Fitting::cents).min().orElse(Long.MAX_VALUE / 4),
                    all.stream().mapToDouble(Fitting::conductanceWPerK).max().orElse(0),
                    all.stream().mapToLong(f -> f.sound().millionths()).min().orElse(0),
                    all.stream().mapToInt(Fitting::leadDays).min().orElse(0)));
        }
        return out;
    }

    private boolean hopeless(Task task, Core core, List<Floor> floors) {
        long cents = core.cents() + costing.workCents(task.done().bill());
        double conductance = 0;
        long sound = core.sound().millionths();
        int lead = core.leadDays();
        for (Floor floor : floors) {
            cents += floor.cents();
            conductance += floor.conductanceWPerK();
            sound += floor.soundMillionths();
            lead = Math.max(lead, floor.leadDays());
        }
        Goal.Bound bound = new Goal.Bound(
                costing.priceCents(cents),
                centi(conductance > 0 ? core.heatW() / conductance - SLACK_K : Integer.MAX_VALUE / CENTI),
                sound,
                costing.labourMin(task.done().bill()),
                costing.days(task.done().bill(), lead));
        return limits.exclude(bound) || task.goal().isHopeless(task.found().layout(), bound);
    }

    private static int centi(double kelvin) {
        return (int) Math.min(Integer.MAX_VALUE, Math.floor(kelvin * CENTI + 0.5));
    }

    private List<Airflow> airflows(Task task, Chance chance, Core core) {
        List<Airflow> out = new ArrayList<>();
        List<Stack> stacks = task.stacks();
        if (chance.fansOn().isEmpty()) {
            for (int i = 0; i < stacks.size(); i++) {
                out.add(new Airflow(stacks, i));
            }
        }
        for (MountFrame frame : query.fitCase().frames()) {
            boolean free = stacks.stream().noneMatch(s -> s.frame().index() == frame.index());
            boolean asked = chance.fansOn().isEmpty()
                    || chance.fansOn().get().equals(frame.mount().id());
            if (free && asked) {
                for (Stack row : query.fanRows(frame, task.done().mods())) {
                    addIfFits(out, task, core, row);
                }
            }
        }
        return out;
    }

    private void addIfFits(List<Airflow> out, Task task, Core core, Stack row) {
        List<Stack> inOrder = new ArrayList<>(task.stacks());
        inOrder.add(row);
        inOrder.sort((a, b) -> Integer.compare(a.frame().index(), b.frame().index()));
        if (query.fits(inOrder, task.done().mods(), core.room())) {
            List<Stack> rowLast = new ArrayList<>(task.stacks());
            rowLast.add(row);
            out.add(new Airflow(List.copyOf(rowLast), rowLast.size() - 1));
        }
    }

    private void pick(Task task, Core core, Airflow airflow, int duty) {
        List<Floor> floors = boundOf(airflow.stacks(), task, duty);
        if (!hopeless(task, core, floors)) {
            pick(task, core, airflow, duty, List.of(), floors);
        }
    }

    private void pick(Task task, Core core, Airflow airflow, int duty, List<Fitting> picked, List<Floor> floors) {
        if (picked.size() == airflow.stacks().size()) {
            offer(task, core, new Build.Airing(picked, airflow.exhaust(), duty));
            return;
        }
        int at = picked.size();
        for (Fitting fitting :
                fittings.of(airflow.stacks().get(at), task.done().mods(), duty, at == airflow.exhaust())) {
            List<Floor> tighter = new ArrayList<>(floors);
            tighter.set(
                    at,
                    new Floor(
                            fitting.cents(),
                            fitting.conductanceWPerK(),
                            fitting.sound().millionths(),
                            fitting.leadDays()));
            if (!hopeless(task, core, tighter)) {
                List<Fitting> more = new ArrayList<>(picked);
                more.add(fitting);
                pick(task, core, airflow, duty, more, tighter);
            }
        }
    }

    private void offer(Task task, Core core, Build.Airing airing) {
        Optional<Build.Outcome> outcome = outcome(core, airing, task.done().bill());
        if (outcome.isPresent() && limits.allow(outcome.get())) {
            task.goal()
                    .offer(
                            task.found().layout(),
                            outcome.get(),
                            () -> new Build(task.found().layout(), task.done(), core, airing, outcome.get()));
        }
    }

    private Optional<Build.Outcome> outcome(Core core, Build.Airing airing, ModBill bill) {
        long cents = core.cents() + costing.workCents(bill);
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
                costing.labourMin(bill),
                costing.days(bill, lead)));
    }
}

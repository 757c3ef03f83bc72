package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.part.Fan;
import loopwright.catalog.part.Part;
import loopwright.catalog.part.Radiator;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.fit.Shape;
import loopwright.fit.Witness;
import loopwright.fit.rules.Role;
import loopwright.loop.MachineModel;
import loopwright.loop.air.AirDirection;
import loopwright.rank.Workbench.Placed;
import loopwright.rank.Workbench.Recipe;

/**
 * Every build that differs from one in a single thing: a stack, a way to blow, a mod, the pump, the block, the duty.
 *
 * <p>They fit, but need not keep the brief's limits: what a limit forbids may still be worth knowing.
 */
public final class Neighbours {

    private final Workbench bench;

    /** Neighbours in a case. */
    public Neighbours(FitCase fitCase, MachineModel model) {
        this.bench = new Workbench(fitCase, model);
    }

    /**
     * A build that differs in one thing.
     *
     * @param kind what kind of change
     * @param what the change, in words
     */
    public record Neighbour(Kind kind, String what, Build build) {}

    /** Kinds of change. */
    public enum Kind {
        /** A radiator with more sections, or of larger ones. */
        LARGER,
        /** A thicker radiator. */
        THICKER,
        /** A second layer of fans. */
        SECOND_LAYER,
        /** Another radiator of the same size. */
        OTHER_CORE,
        /** Other fans. */
        OTHER_FANS,
        /** One more radiator. */
        ONE_MORE,
        /** A bare row of fans. */
        BARE_ROW,
        /** Another way to blow. */
        TURNED,
        /** One mod more or less. */
        MOD,
        /** Another pump. */
        PUMP,
        /** Another block. */
        BLOCK,
        /** Another duty. */
        DUTY
    }

    /** Where everything of a build stands. */
    public Witness witness(Build build) {
        return bench.witness(build);
    }

    /** The neighbours; of one kind on one mount, the coolest, and the cheapest where that is another. */
    public List<Neighbour> of(Build build) {
        Recipe recipe = build.recipe();
        List<Neighbour> out = new ArrayList<>();
        stacks(recipe, out);
        turned(recipe, out);
        mods(recipe, out);
        cores(recipe, Role.PUMP, Kind.PUMP, out);
        cores(recipe, Role.BLOCK, Kind.BLOCK, out);
        duties(recipe, out);
        out.sort(Comparator.comparingInt((Neighbour n) -> n.build().outcome().coolantOverRoomCentiK())
                .thenComparingLong(n -> n.build().outcome().priceCents())
                .thenComparing(Neighbour::what));
        return List.copyOf(out);
    }

    private void offer(Recipe recipe, Kind kind, String what, List<Neighbour> out) {
        bench.make(recipe).ifPresent(b -> out.add(new Neighbour(kind, what, b)));
    }

    private void stacks(Recipe recipe, List<Neighbour> out) {
        for (MountFrame frame : bench.fitCase().frames()) {
            List<Neighbour> here = new ArrayList<>();
            Optional<Placed> now = recipe.placed().stream()
                    .filter(p -> p.fitting().stack().frame().index() == frame.index())
                    .findFirst();
            for (Shape shape : bench.fitCase().shapes().all()) {
                if (now.isPresent()) {
                    instead(recipe, now.get(), shape, here);
                } else {
                    added(recipe, frame, shape, here);
                }
            }
            out.addAll(bestOfEachKind(here));
        }
    }

    /** The coolest of each kind, and the cheapest where that is another. */
    private static List<Neighbour> bestOfEachKind(List<Neighbour> all) {
        Map<Kind, Neighbour> coolest = new EnumMap<>(Kind.class);
        Map<Kind, Neighbour> cheapest = new EnumMap<>(Kind.class);
        for (Neighbour one : all) {
            coolest.merge(one.kind(), one, (a, b) -> cooler(a, b) ? a : b);
            cheapest.merge(one.kind(), one, (a, b) -> cheaper(a, b) ? a : b);
        }
        List<Neighbour> out = new ArrayList<>(coolest.values());
        cheapest.values().stream().filter(one -> !coolest.containsValue(one)).forEach(out::add);
        return out;
    }

    private static boolean cooler(Neighbour a, Neighbour b) {
        int byHeat = Integer.compare(
                a.build().outcome().coolantOverRoomCentiK(), b.build().outcome().coolantOverRoomCentiK());
        return byHeat != 0
                ? byHeat < 0
                : a.build().outcome().priceCents() <= b.build().outcome().priceCents();
    }

    private static boolean cheaper(Neighbour a, Neighbour b) {
        int byPrice = Long.compare(
                a.build().outcome().priceCents(), b.build().outcome().priceCents());
        return byPrice != 0
                ? byPrice < 0
                : a.build().outcome().coolantOverRoomCentiK()
                        <= b.build().outcome().coolantOverRoomCentiK();
    }

    private void instead(Recipe recipe, Placed now, Shape shape, List<Neighbour> out) {
        Fitting old = now.fitting();
        if (old.radiator().isEmpty() || !shape.arrangement().hasRadiator()) {
            return;
        }
        Stack stack = new Stack(old.stack().frame(), shape);
        for (Fan fan : bench.fitCase().shapes().fansOf(shape)) {
            for (Radiator radiator : bench.fitCase().shapes().radiatorsOf(shape)) {
                Optional<Kind> kind = StackChange.of(old, shape, radiator, fan);
                if (kind.isPresent()) {
                    Fitting fitting = Fitting.of(stack, Optional.of(radiator), fan, bench.fittings());
                    Recipe changed = with(recipe, now, new Placed(fitting, now.direction()));
                    offer(changed, kind.get(), StackChange.words(kind.get(), fitting), out);
                }
            }
        }
    }

    private void added(Recipe recipe, MountFrame frame, Shape shape, List<Neighbour> out) {
        Stack stack = new Stack(frame, shape);
        boolean bare = !shape.arrangement().hasRadiator();
        boolean hasRow =
                recipe.placed().stream().anyMatch(p -> p.fitting().radiator().isEmpty());
        if (bare && hasRow) {
            return;
        }
        Kind kind = bare ? Kind.BARE_ROW : Kind.ONE_MORE;
        for (Fan fan : bench.fitCase().shapes().fansOf(shape)) {
            List<Optional<Radiator>> cores = new ArrayList<>();
            if (bare) {
                cores.add(Optional.empty());
            } else {
                bench.fitCase().shapes().radiatorsOf(shape).forEach(r -> cores.add(Optional.of(r)));
            }
            for (Optional<Radiator> core : cores) {
                for (AirDirection direction : AirDirection.values()) {
                    Fitting fitting = Fitting.of(stack, core, fan, bench.fittings());
                    List<Placed> more = new ArrayList<>(recipe.placed());
                    more.add(new Placed(fitting, direction));
                    offer(
                            new Recipe(more, recipe.dutyPercent(), recipe.core(), recipe.mods()),
                            kind,
                            StackChange.words(kind, fitting) + StackChange.way(direction),
                            out);
                }
            }
        }
    }

    private static Recipe with(Recipe recipe, Placed old, Placed changed) {
        List<Placed> placed = new ArrayList<>(recipe.placed());
        placed.set(placed.indexOf(old), changed);
        return new Recipe(placed, recipe.dutyPercent(), recipe.core(), recipe.mods());
    }

    private void turned(Recipe recipe, List<Neighbour> out) {
        for (Placed placed : recipe.placed()) {
            AirDirection other = placed.direction() == AirDirection.IN ? AirDirection.OUT : AirDirection.IN;
            String mount = placed.fitting().stack().frame().mount().id();
            offer(
                    with(recipe, placed, new Placed(placed.fitting(), other)),
                    Kind.TURNED,
                    mount + StackChange.way(other),
                    out);
        }
    }

    private void mods(Recipe recipe, List<Neighbour> out) {
        List<Mod> all = bench.fitCase().chassis().mods();
        for (ModSet set : bench.query().validSets()) {
            long changed = set.bits() ^ recipe.mods().bits();
            if (Long.bitCount(changed) == 1) {
                Mod mod = all.get(Long.numberOfTrailingZeros(changed));
                String what = (recipe.mods().isSubsetOf(set) ? "" : "without: ") + mod.title();
                offer(new Recipe(recipe.placed(), recipe.dutyPercent(), recipe.core(), set), Kind.MOD, what, out);
            }
        }
    }

    private void cores(Recipe recipe, Role role, Kind kind, List<Neighbour> out) {
        Map<String, Neighbour> byPart = new TreeMap<>();
        Map<Role, Part> old = recipe.core().chosen().parts();
        for (Core core : bench.cores()) {
            Map<Role, Part> parts = core.chosen().parts();
            boolean same = true;
            for (Role each : Role.values()) {
                boolean free = each == role || (role == Role.PUMP && each == Role.RESERVOIR);
                same &= free || java.util.Objects.equals(old.get(each), parts.get(each));
            }
            Part part = parts.get(role);
            if (same && part != null && !part.equals(old.get(role))) {
                List<Neighbour> made = new ArrayList<>();
                offer(
                        new Recipe(recipe.placed(), recipe.dutyPercent(), core, recipe.mods()),
                        kind,
                        part.title() + " (" + part.id() + ")",
                        made);
                made.forEach(n -> byPart.merge(part.id(), n, (a, b) -> cheaper(a, b) ? a : b));
            }
        }
        out.addAll(byPart.values());
    }

    private void duties(Recipe recipe, List<Neighbour> out) {
        int step = bench.fitCase().brief().terms().dutyStepPercent();
        for (int duty : List.of(recipe.dutyPercent() - step, recipe.dutyPercent() + step)) {
            if (duty > 0 && duty <= Bounds.FULL_PERCENT) {
                offer(
                        new Recipe(recipe.placed(), duty, recipe.core(), recipe.mods()),
                        Kind.DUTY,
                        "fans at " + duty + " %",
                        out);
            }
        }
        int faster = recipe.dutyPercent() + fasterPercent(recipe);
        if (faster <= Bounds.FULL_PERCENT) {
            offer(
                    new Recipe(recipe.placed(), faster, recipe.core(), recipe.mods()),
                    Kind.DUTY,
                    "fans " + FASTER_RPM + " rpm faster, at " + faster + " %",
                    out);
        }
    }

    /** The builder's usual step of speed, rpm; common practice, no source. */
    private static final int FASTER_RPM = 200;

    /** The duty that adds as many rpm to the fastest fan, whole percent, rounded up. */
    private static int fasterPercent(Recipe recipe) {
        double fastestRpm = 1;
        for (Placed placed : recipe.placed()) {
            fastestRpm = Math.max(fastestRpm, placed.fitting().fan().air().speedMaxRpm());
        }
        return (int) Math.ceil(Bounds.FULL_PERCENT * FASTER_RPM / fastestRpm);
    }
}

package loopwright.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Best;
import loopwright.answer.Unlocks.Gain;
import loopwright.answer.Unlocks.Impossible;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.answer.Unlocks.Unlocked;
import loopwright.answer.Unlocks.Way;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.fit.Shape;
import loopwright.fit.Shortfalls;
import loopwright.rank.ModBill;

/** Answers what each mod unlocks, from the complete list of what fits. */
public final class UnlockSearch {

    private final FitCase fitCase;
    private final FitQuery query;
    private final FitResult fits;
    private final Shortfalls shortfalls;
    private final Cooling cooling;
    private final Map<ModSet, ModBill> bills = new HashMap<>();
    private final Optional<Best> asDelivered;

    /**
     * Sets the question up.
     *
     * @param search the search that found {@code fits}
     */
    public UnlockSearch(FitCase fitCase, FitSearch search, FitResult fits, Cooling cooling) {
        this.fitCase = fitCase;
        this.query = new FitQuery(search);
        this.fits = fits;
        this.shortfalls = new Shortfalls(search);
        this.cooling = cooling;
        this.asDelivered = best(fits.fits(), ModSet.NONE);
    }

    /** The whole answer. */
    public Unlocks answer() {
        List<AtMount> mounts = new ArrayList<>();
        for (MountFrame frame : fitCase.frames()) {
            mounts.add(atMount(frame));
        }
        Optional<Cooling.Cooled> uncut =
                asDelivered.flatMap(b -> cooling.coolest(b.layout().layout(), ModSet.NONE));
        OptionalDouble overRoomK =
                uncut.map(c -> OptionalDouble.of(cooling.overRoomK(c))).orElse(OptionalDouble.empty());
        return new Unlocks(
                fits,
                List.copyOf(mounts),
                new Combinations(fitCase, cooling).unbeaten(fits.fits()),
                overRoomK,
                uncut.map(cooling::band));
    }

    private AtMount atMount(MountFrame frame) {
        SortedMap<RadiatorClass, List<FoundLayout>> single = new TreeMap<>();
        for (FoundLayout found : fits.fits()) {
            List<Stack> stacks = found.layout().stacks();
            if (stacks.size() == 1 && stacks.get(0).frame().index() == frame.index()) {
                single.computeIfAbsent(RadiatorClass.of(stacks.get(0)), c -> new ArrayList<>())
                        .add(found);
            }
        }
        List<RadiatorClass> uncut = single.entrySet().stream()
                .filter(e ->
                        e.getValue().stream().anyMatch(f -> f.needed().get(0).size() == 0))
                .map(Map.Entry::getKey)
                .toList();
        List<Unlocked> unlocked = new ArrayList<>();
        single.forEach((radiator, layouts) -> {
            if (uncut.stream().noneMatch(u -> u.covers(radiator))) {
                unlocked.add(new Unlocked(radiator, ways(frame, radiator, layouts)));
            }
        });
        List<Impossible> impossible = new ArrayList<>();
        byClass().forEach((radiator, shapes) -> {
            // What a stopped search has not found is not thereby impossible.
            if (fits.isComplete() && !single.containsKey(radiator)) {
                impossible.add(new Impossible(radiator, shortfalls.of(frame, shapes)));
            }
        });
        return new AtMount(frame, uncut, List.copyOf(unlocked), List.copyOf(impossible));
    }

    private SortedMap<RadiatorClass, List<Shape>> byClass() {
        SortedMap<RadiatorClass, List<Shape>> out = new TreeMap<>();
        for (Shape shape : fitCase.shapes().all()) {
            out.computeIfAbsent(new RadiatorClass(shape.pattern(), shape.thicknessHmm()), c -> new ArrayList<>())
                    .add(shape);
        }
        return out;
    }

    private List<Way> ways(MountFrame frame, RadiatorClass radiator, List<FoundLayout> layouts) {
        SortedSet<ModSet> all = new TreeSet<>();
        layouts.forEach(f -> all.addAll(f.needed()));
        List<Way> out = new ArrayList<>();
        for (ModSet mods : all) {
            if (all.stream().noneMatch(m -> !m.equals(mods) && m.isSubsetOf(mods))) {
                out.add(way(frame, radiator, layouts, mods));
            }
        }
        out.sort(Comparator.comparingLong(Way::costCents).thenComparing(Way::mods));
        return List.copyOf(out);
    }

    private Way way(MountFrame frame, RadiatorClass radiator, List<FoundLayout> layouts, ModSet mods) {
        Map<String, Stack> stacks = new LinkedHashMap<>();
        for (FoundLayout found : layouts) {
            if (found.needed().contains(mods)) {
                Stack stack = found.layout().stacks().get(0);
                stacks.putIfAbsent(stack.shape().textWithoutEnd(), stack);
            }
        }
        List<FoundLayout> using = fits.fits().stream()
                .filter(f -> f.layout().stacks().stream()
                        .anyMatch(s -> s.frame().index() == frame.index()
                                && RadiatorClass.of(s).equals(radiator)))
                .toList();
        Best best = best(using, mods)
                .orElseThrow(() -> new IllegalStateException("nothing fits with " + mods + " that needs it"));
        return way(mods, List.copyOf(stacks.values()), best);
    }

    /** Every way to have one layout, cheapest first. */
    public List<Way> waysTo(FoundLayout found) {
        List<Way> out = new ArrayList<>();
        for (ModSet mods : found.needed()) {
            Best itself = new Best(found, cooling.conductanceWPerK(found.layout(), mods));
            out.add(way(mods, found.layout().stacks(), itself));
        }
        out.sort(Comparator.comparingLong(Way::costCents).thenComparing(Way::mods));
        return List.copyOf(out);
    }

    private Way way(ModSet mods, List<Stack> stacks, Best best) {
        ModBill bill = bills.computeIfAbsent(mods, m -> ModBill.of(fitCase.catalog(), fitCase.chassis(), m));
        return new Way(
                mods,
                bill,
                bill.costCents(fitCase.brief().terms()),
                bill.days(fitCase.brief().terms()),
                stacks,
                best,
                gain(best, mods));
    }

    private Optional<Gain> gain(Best best, ModSet mods) {
        if (asDelivered.isEmpty()) {
            return Optional.empty();
        }
        Optional<Cooling.Cooled> before =
                cooling.coolest(asDelivered.get().layout().layout(), ModSet.NONE);
        Optional<Cooling.Cooled> after = cooling.coolest(best.layout().layout(), mods);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double gainK = cooling.overRoomK(before.get()) - cooling.overRoomK(after.get());
        return Optional.of(new Gain(
                gainK,
                cooling.gainBand(before.get(), after.get()),
                best.conductanceWPerK() - asDelivered.get().conductanceWPerK()));
    }

    /** The layout that conducts most with a mod set, of those that fit with it; ties to the smallest key. */
    private Optional<Best> best(List<FoundLayout> layouts, ModSet mods) {
        List<Best> candidates = new ArrayList<>();
        for (FoundLayout found : layouts) {
            if (found.needed().stream().anyMatch(n -> n.isSubsetOf(mods))) {
                candidates.add(new Best(found, cooling.conductanceWPerK(found.layout(), mods)));
            }
        }
        candidates.sort(Comparator.comparingDouble(Best::conductanceWPerK)
                .reversed()
                .thenComparing(b -> b.layout().layout().text()));
        return candidates.stream()
                .filter(b -> b.layout().needed().contains(mods) || fits(b.layout(), mods))
                .findFirst();
    }

    private boolean fits(FoundLayout found, ModSet mods) {
        return query.partSets().stream().anyMatch(p -> query.fits(found.layout().stacks(), mods, p));
    }
}

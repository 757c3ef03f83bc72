package loopwright.rank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.FitResult;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.loop.MachineModel;
import loopwright.rank.BuildWalk.Look;

/**
 * Ranks builds: the exact set that no other build beats in price and temperature, and the first few by an order.
 *
 * <p>Every layout that fits is looked at with every mod set worth it; a layout is passed over only when what is cheapest
 * and coolest of it, taken together, is already beaten.
 */
public final class RankSearch {

    /** Mod sets that a first look takes of each group: the smallest. Only speed depends on it. */
    private static final int SCOUTED_SETS = 24;

    private final FitCase fitCase;
    private final FitWish wish;
    private final MachineModel model;
    private final BooleanSupplier interrupted;

    /** A ranking by a model of temperatures. */
    public RankSearch(FitCase fitCase, FitWish wish, MachineModel model, BooleanSupplier interrupted) {
        this.fitCase = fitCase;
        this.wish = wish;
        this.model = model;
        this.interrupted = interrupted;
    }

    /** Runs it. */
    public RankResult run(Order order, int top) {
        return run(order, top, layout -> true);
    }

    /** Runs it over some of the layouts only. */
    public RankResult run(Order order, int top, Predicate<Layout> only) {
        FitResult all = new FitSearch(fitCase, wish, interrupted).run();
        FitResult fits = new FitResult(
                all.fits().stream().filter(f -> only.test(f.layout())).toList(),
                all.unknown(),
                all.incompleteBecause(),
                all.modSets());
        FitQuery query = FitQuery.ofBuilds(fitCase, wish, interrupted);
        List<Core> cores = Cores.of(fitCase, query.partSets());
        if (cores.isEmpty() || fits.fits().isEmpty()) {
            return new RankResult(fits, List.of(), List.of(), Map.of(), fits.incompleteBecause());
        }
        WaterReach water = new WaterReach(
                model,
                cores.stream().map(c -> c.heat().water()).distinct().toList(),
                fitCase.brief().limits().coolantMaxC());
        Bounds bounds = new Bounds(query.fitCase(), new Blowings(query.fitCase(), model, water));
        BuildWalk walk = new BuildWalk(query, cores, bounds, model);
        Outlook outlook =
                new Outlook(bounds, cores, BuildLimits.of(fitCase.brief().limits()));
        Work work = new Work(fitCase, query.validSets());
        List<List<FoundLayout>> groups = work.inOrder(fits.fits());
        Unbeaten scout = new Unbeaten();
        for (List<FoundLayout> alike : groups) {
            for (ModSet mods : interrupted.getAsBoolean()
                    ? List.<ModSet>of()
                    : work.setsFor(alike).stream().limit(SCOUTED_SETS).toList()) {
                walk.walk(alike, work.done(mods), scout, Look.FIRST);
            }
        }
        Unbeaten unbeaten = new Unbeaten(scout);
        Best best = new Best(order, top);
        Optional<String> incomplete = fits.incompleteBecause();
        for (Goal goal : List.of(unbeaten, best)) {
            for (List<FoundLayout> alike : goal == best ? work.byFigure(groups, outlook, order) : groups) {
                if (interrupted.getAsBoolean()) {
                    incomplete = Optional.of("interrupted");
                    break;
                }
                for (ModSet mods : work.setsFor(alike)) {
                    walk.walk(alike, work.done(mods), goal, Look.WHOLE);
                }
            }
        }
        List<RankResult.Ranked> front = new ArrayList<>();
        unbeaten.dearestFirst().forEach(k -> front.add(ranked(query, k.build(), k.equal())));
        List<RankResult.Ranked> listed = new ArrayList<>();
        best.inOrder().forEach(b -> listed.add(ranked(query, b, 1)));
        return new RankResult(fits, front, listed, cheaper(outlook, work, groups, unbeaten), incomplete);
    }

    /** Counts, by reason, the layouts that could be had for less than the cheapest build. */
    private static Map<String, Integer> cheaper(
            Outlook outlook, Work work, List<List<FoundLayout>> groups, Unbeaten unbeaten) {
        long cheapest = unbeaten.dearestFirst().stream()
                .mapToLong(k -> k.build().outcome().priceCents())
                .min()
                .orElse(Long.MAX_VALUE);
        Map<String, Integer> out = new TreeMap<>();
        for (List<FoundLayout> alike : groups) {
            FoundLayout first = alike.get(0);
            List<Build.Done> ways = first.needed().stream().map(work::done).toList();
            outlook.whyNotCheaper(first.layout(), ways, cheapest)
                    .ifPresent(why -> out.merge(why, alike.size(), Integer::sum));
        }
        return out;
    }

    private static RankResult.Ranked ranked(FitQuery query, Build build, int equal) {
        return new RankResult.Ranked(
                build,
                equal,
                query.witness(build.stacks(), build.mods(), build.room())
                        .orElseThrow(() -> new IllegalStateException("a ranked build does not stand: " + build.key())));
    }

    /** What is worked through, and in what order: cheap mod sets first, so that bounds bite early. */
    private static final class Work {
        private final FitCase fitCase;
        private final List<ModSet> valid;
        private final Map<ModSet, Build.Done> done = new HashMap<>();
        private final IdentityHashMap<List<FoundLayout>, List<ModSet>> sets = new IdentityHashMap<>();

        Work(FitCase fitCase, List<ModSet> valid) {
            this.fitCase = fitCase;
            this.valid = valid;
        }

        /** Layouts that take the same parts on the same mounts, together; likely good ones first. */
        List<List<FoundLayout>> inOrder(List<FoundLayout> fits) {
            Map<String, List<FoundLayout>> alike = new TreeMap<>();
            for (FoundLayout found : fits) {
                alike.computeIfAbsent(found.layout().partsText(), p -> new ArrayList<>())
                        .add(found);
            }
            List<List<FoundLayout>> out = new ArrayList<>(alike.values());
            out.sort(Comparator.comparingLong(group -> score(group.get(0))));
            return out;
        }

        /** Likely first ones of an order first. */
        List<List<FoundLayout>> byFigure(List<List<FoundLayout>> groups, Outlook outlook, Order order) {
            IdentityHashMap<List<FoundLayout>, Long> figures = new IdentityHashMap<>();
            for (List<FoundLayout> alike : groups) {
                long least = Long.MAX_VALUE;
                for (ModSet needed : alike.get(0).needed()) {
                    least = Math.min(
                            least, order.figure(outlook.bound(alike.get(0).layout(), done(needed))));
                }
                figures.put(alike, least);
            }
            List<List<FoundLayout>> out = new ArrayList<>(groups);
            out.sort(Comparator.comparingLong(figures::get));
            return out;
        }

        private long score(FoundLayout found) {
            int area = found.layout().stacks().stream()
                    .mapToInt(s ->
                            s.shape().pattern().fans() * s.shape().pattern().sizeMm())
                    .sum();
            return (long) done(found.needed().get(0)).bill().handsOnMin() - 2L * area;
        }

        /** The valid sets with which some of the layouts fit: one that a smaller set fits with may still buy air. */
        List<ModSet> setsFor(List<FoundLayout> alike) {
            return sets.computeIfAbsent(alike, this::findSets);
        }

        private List<ModSet> findSets(List<FoundLayout> alike) {
            Set<ModSet> needed = new TreeSet<>();
            alike.forEach(f -> needed.addAll(f.needed()));
            List<ModSet> out = new ArrayList<>();
            for (ModSet set : valid) {
                for (ModSet one : needed) {
                    if (one.isSubsetOf(set)) {
                        out.add(set);
                        break;
                    }
                }
            }
            return List.copyOf(out);
        }

        Build.Done done(ModSet mods) {
            return done.computeIfAbsent(mods, m -> Build.Done.of(fitCase, m));
        }
    }
}

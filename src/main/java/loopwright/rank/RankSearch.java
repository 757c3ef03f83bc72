package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import loopwright.catalog.brief.BriefLimits;
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
            Map<String, Integer> mixed = fits.fits().isEmpty()
                            || Cores.all(fitCase, query.partSets()).isEmpty()
                    ? Map.of()
                    : Map.of(BuildLimits.MIXED_METALS, fits.fits().size());
            return new RankResult(fits, List.of(), List.of(), mixed, fits.incompleteBecause());
        }
        BriefLimits brief = fitCase.brief().limits();
        Bounds bounds = Bounds.of(query, cores, model, brief.coolantMaxC());
        BuildLimits limits = BuildLimits.of(brief);
        Thermal thermal = new Thermal(query.fitCase(), model, brief.heat().orElse(BriefLimits.HeatLimits.NONE));
        BuildWalk walk = new BuildWalk(query, cores, bounds, new BuildWalk.Rules(limits, thermal), model);
        Outlook outlook = new Outlook(bounds, cores, limits);
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
}

package loopwright.rank;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.loop.MachineModel;
import loopwright.rank.BuildWalk.Look;

/**
 * Asks of a case's builds, again and again, whether any keeps some limits, and how good a figure can be within them.
 *
 * <p>The answers are exact: what a ranking with these limits would find.
 */
public final class Attainable {

    /** The warmest coolant that any limit allows, C: what a brief may ask at most, see {@link BriefLimits}. */
    private static final double WARMEST_C = 80;

    private final FitQuery query;
    private final List<Core> cores;
    private final MachineModel model;
    private final BooleanSupplier interrupted;
    private final List<List<FoundLayout>> groups;
    private final Work work;
    private final Optional<Bounds> bounds;
    private final Map<BriefLimits.HeatLimits, Thermal> thermals = new HashMap<>();

    /**
     * The builds of some layouts.
     *
     * @param only which layouts are looked at
     * @param interrupted asked now and then: true stops, and what was not found yet stays so
     */
    public Attainable(
            FitCase fitCase, FitWish wish, MachineModel model, Predicate<Layout> only, BooleanSupplier interrupted) {
        this.model = model;
        this.interrupted = interrupted;
        this.query = FitQuery.ofBuilds(fitCase, wish, interrupted);
        this.cores = Cores.of(fitCase, query.partSets());
        this.work = new Work(fitCase, query.validSets());
        this.groups = cores.isEmpty()
                ? List.of()
                : work.inOrder(new FitSearch(fitCase, wish, interrupted)
                        .run().fits().stream()
                                .filter(f -> only.test(f.layout()))
                                .toList());
        this.bounds = groups.isEmpty() ? Optional.empty() : Optional.of(Bounds.of(query, cores, model, WARMEST_C));
    }

    /**
     * What a build must keep.
     *
     * @param limits price, coolant, noise, labour, days
     * @param heat component and case temperatures
     */
    public record Kept(BuildLimits limits, BriefLimits.HeatLimits heat) {}

    /** A build that keeps the limits, if there is one. */
    public Optional<Build> any(Kept kept) {
        Any goal = new Any();
        for (Look look : Look.values()) {
            walk(goal, look, kept, groups, () -> goal.found().isPresent());
        }
        return goal.found();
    }

    /** The best build by a figure among those that keep the limits, if there is one. */
    public Optional<Build> best(Order order, Kept kept) {
        Best goal = new Best(order, 1);
        if (bounds.isPresent()) {
            Outlook outlook = new Outlook(bounds.get(), cores, kept.limits());
            List<List<FoundLayout>> likelyFirst = work.byFigure(groups, outlook, order);
            for (Look look : Look.values()) {
                walk(goal, look, kept, likelyFirst, () -> false);
            }
        }
        return goal.inOrder().stream().findFirst();
    }

    private void walk(Goal goal, Look look, Kept kept, List<List<FoundLayout>> inOrder, BooleanSupplier enough) {
        if (bounds.isEmpty()) {
            return;
        }
        Thermal thermal = thermals.computeIfAbsent(kept.heat(), h -> new Thermal(query.fitCase(), model, h));
        BuildWalk walk = new BuildWalk(query, cores, bounds.get(), new BuildWalk.Rules(kept.limits(), thermal), model);
        for (List<FoundLayout> alike : inOrder) {
            for (ModSet mods : work.setsFor(alike)) {
                if (interrupted.getAsBoolean() || enough.getAsBoolean()) {
                    return;
                }
                walk.walk(alike, work.done(mods), goal, look);
            }
        }
    }
}

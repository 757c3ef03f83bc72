package loopwright.rank;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.brief.BriefLimits;
import loopwright.fit.FitCase;
import loopwright.fit.FitQuery;
import loopwright.fit.FitWish;
import loopwright.fit.Layout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.PartSet;
import loopwright.fit.Witness;
import loopwright.loop.MachineModel;
import loopwright.loop.SoundPower;
import loopwright.loop.air.AirDirection;
import loopwright.loop.material.WettedMetals;

/**
 * Puts single builds together, whatever the brief's limits: what a ranking finds among thousands, one at a time.
 *
 * <p>Only what fits is put together; what has no steady state is no build, nor what has aluminium and copper in one loop.
 */
final class Workbench {

    private final FitQuery query;
    private final FitCase fitCase;
    private final Blowings blowings;
    private final Thermal thermal;
    private final Vents vents;
    private final List<Core> cores;
    private final Bounds bounds;
    private final LoopFittings fittings;

    Workbench(FitCase asked, MachineModel model) {
        this.query = FitQuery.ofBuilds(asked, FitWish.ALL, () -> false);
        this.fitCase = query.fitCase();
        this.cores = Cores.all(fitCase, query.partSets());
        WaterReach water = new WaterReach(
                model,
                cores.stream().map(c -> c.heat().water()).distinct().toList(),
                fitCase.brief().limits().coolantMaxC());
        this.blowings = new Blowings(fitCase, model, water);
        this.thermal = new Thermal(fitCase, model, BriefLimits.HeatLimits.NONE);
        this.vents = new Vents(fitCase, model);
        this.bounds = new Bounds(fitCase, blowings);
        this.fittings = LoopFittings.of(fitCase);
    }

    /** The case, in which bare rows of fans may hang too. */
    FitCase fitCase() {
        return fitCase;
    }

    LoopFittings fittings() {
        return fittings;
    }

    FitQuery query() {
        return query;
    }

    /** Every choice of parts besides radiators and fans. */
    List<Core> cores() {
        return cores;
    }

    /**
     * What a build is made of.
     *
     * @param placed one a stack, in any order
     */
    record Recipe(List<Placed> placed, int dutyPercent, Core core, ModSet mods) {}

    /** Parts on a stack, and which way they blow. */
    record Placed(Fitting fitting, AirDirection direction) {}

    /** The build of a recipe, if it fits and finds a steady state. */
    Optional<Build> make(Recipe recipe) {
        List<Stack> stacks = AirPlans.inOrder(
                recipe.placed().stream().map(p -> p.fitting().stack()).toList());
        List<Stack> radiators = stacks.stream()
                .filter(s -> s.shape().arrangement().hasRadiator())
                .toList();
        if (radiators.isEmpty()
                || metals(recipe).mixes()
                || !fits(stacks, recipe.mods(), recipe.core().room())) {
            return Optional.empty();
        }
        List<Blowing> picked = new ArrayList<>();
        List<Floor> floors = new ArrayList<>();
        for (Placed one : recipe.placed()) {
            Blowing blowing = blowings.one(one, recipe.mods(), recipe.dutyPercent());
            picked.add(blowing);
            floors.add(blowing.floor());
        }
        Airing airing = Airing.of(picked, recipe.dutyPercent());
        Thermal.InAir inAir = thermal.inAir(airing, vents.of(stacks, recipe.mods()));
        Build.Done done = Build.Done.of(fitCase, recipe.mods());
        return inAir.overRoomCentiK(recipe.core().heat()).map(centiK -> {
            Goal.Bound sums = bounds.at(recipe.core(), done, floors, 0);
            Build.Outcome outcome = new Build.Outcome(
                    sums.priceCents(), centiK, new SoundPower(sums.soundMillionths()), sums.labourMin(), sums.days());
            Layout layout = new Layout(fitCase.chassis().id(), radiators);
            Build.AtWork work = new Build.AtWork(
                    airing.on(layout), inAir.machine(recipe.core().heat()), recipe.dutyPercent());
            return new Build(layout, done, recipe.core(), work, outcome);
        });
    }

    private static WettedMetals metals(Recipe recipe) {
        return WettedMetals.ofRadiators(recipe.placed().stream()
                        .flatMap(p -> p.fitting().radiator().stream())
                        .toList())
                .and(recipe.core().metals());
    }

    private boolean fits(List<Stack> stacks, ModSet mods, PartSet room) {
        return query.fits(stacks, mods, room);
    }

    /** Where everything of a build stands. */
    Witness witness(Build build) {
        return query.witness(build.stacks(), build.mods(), build.room())
                .orElseThrow(() -> new IllegalStateException("a build does not stand: " + build.key()));
    }
}

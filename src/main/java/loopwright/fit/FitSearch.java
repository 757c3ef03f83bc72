package loopwright.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import loopwright.fit.ModModel.ModWorld;
import loopwright.fit.Scene.Option;
import loopwright.fit.SceneMaker.Knowledge;

/**
 * Finds every layout that fits, each with all the mod sets it needs.
 *
 * <p>Choco streams the valid mod sets, smaller ones first, and the placings of the parts; the position kernel settles
 * the geometry of each. A set is needed for a layout exactly when the layout fits with it and no smaller needed set is
 * part of it.
 */
public final class FitSearch {

    private final FitCase fitCase;
    private final FitWish wish;
    private final BooleanSupplier interrupted;
    private final List<ModWorld> worlds;
    private final SceneMaker maker;

    /**
     * Sets the search up.
     *
     * @param interrupted asked now and then: true stops the search, and the answer says so
     */
    public FitSearch(FitCase fitCase, FitWish wish, BooleanSupplier interrupted) {
        this.fitCase = fitCase;
        this.wish = wish;
        this.interrupted = interrupted;
        this.worlds = new ModModel(fitCase.chassis(), ModRules.of(fitCase, wish), ModRules.thatMatter(fitCase, wish))
                .all(interrupted);
        this.maker = new SceneMaker(fitCase, PartSet.smallest(PartSet.all(fitCase), fitCase.strictness()));
    }

    /**
     * A search for the layouts that fit at best case: if every dimension were off in our favour by as much as it may be,
     * whatever the brief says of tight places. All that fit are among them. A {@link WitnessFinder} of this search finds
     * for each the positions with the largest smallest margin at nominal dimensions, which may be negative.
     */
    public static FitSearch atBestCase(FitCase fitCase, FitWish wish, BooleanSupplier interrupted) {
        return new FitSearch(fitCase.atBestCase(), wish, interrupted);
    }

    /**
     * A search over builds: with mods that only change air, bare rows of fans, and every room the parts may take; only
     * asked for single layouts, never run.
     */
    static FitSearch ofBuilds(FitCase fitCase, FitWish wish, BooleanSupplier interrupted) {
        FitCase withFans = fitCase.withFanRows();
        return new FitSearch(
                withFans,
                wish,
                interrupted,
                new ModModel(fitCase.chassis(), ModRules.of(fitCase, wish), ModRules.thatMatterForBuilds(fitCase, wish))
                        .all(interrupted),
                new SceneMaker(withFans, PartSet.all(fitCase)));
    }

    private FitSearch(
            FitCase fitCase, FitWish wish, BooleanSupplier interrupted, List<ModWorld> worlds, SceneMaker maker) {
        this.fitCase = fitCase;
        this.wish = wish;
        this.interrupted = interrupted;
        this.worlds = worlds;
        this.maker = maker;
    }

    /** Runs it. */
    public FitResult run() {
        Stop stop = new Stop(wish, interrupted);
        stop.now(0); // a list of mod sets that was cut short must not look like a whole one
        Found known = new Found(fitCase);
        for (ModWorld world : worlds) {
            if (stop.now(known.size())) {
                break;
            }
            Scene scene = maker.scene(world, Knowledge.KNOWN_ONLY);
            boolean whole = new LayoutWalk(maker.pairs(), scene, fresh(world, scene, Knowledge.KNOWN_ONLY))
                    .run(chosen -> {
                        known.note(chosen, world.mods());
                        return !stop.now(known.size());
                    });
            if (!whole) {
                break;
            }
        }
        List<FoundLayout> fits = known.all(ModRules.gentlestFirst(fitCase.chassis()));
        fits.sort(Comparator.comparing(f -> f.layout().text()));
        return new FitResult(
                fits, maker.sawUnknown() ? unknown(known, stop) : List.of(), stop.because(), worlds.size());
    }

    private List<Fresh.Choice> fresh(ModWorld world, Scene scene, Knowledge knowledge) {
        return new Fresh(fitCase, maker, wish).choices(world, scene, knowledge);
    }

    private List<UnknownLayout> unknown(Found known, Stop stop) {
        Map<String, UnknownLayout> out = new TreeMap<>();
        for (ModWorld world : worlds) {
            if (stop.now(known.size())) {
                break;
            }
            Scene scene = maker.scene(world, Knowledge.UNKNOWN_AS_ZERO);
            boolean whole = new LayoutWalk(maker.pairs(), scene, fresh(world, scene, Knowledge.UNKNOWN_AS_ZERO))
                    .run(chosen -> {
                        if (!known.has(chosen)) {
                            Layout layout = known.layout(chosen);
                            out.computeIfAbsent(
                                    layout.text(), t -> new UnknownLayout(layout, toMeasure(scene, chosen)));
                        }
                        return !stop.now(known.size());
                    });
            if (!whole) {
                break;
            }
        }
        return List.copyOf(out.values());
    }

    /** What is unknown of the stacks, of what is built in, and of every way to place the parts. */
    private List<String> toMeasure(Scene scene, List<Option> chosen) {
        Set<String> out = new TreeSet<>();
        chosen.forEach(o -> o.hung().forEach(h -> out.addAll(h.hang().occupant().unknowns())));
        scene.builtIn().forEach(b -> out.addAll(maker.bodies().get(b).unknowns()));
        scene.settings().stream()
                .findFirst()
                .ifPresent(first -> first.bodies()
                        .forEach(b -> out.addAll(maker.bodies().get(b).unknowns())));
        return List.copyOf(out);
    }

    SceneMaker maker() {
        return maker;
    }

    List<ModWorld> worlds() {
        return worlds;
    }

    FitCase fitCase() {
        return fitCase;
    }
}

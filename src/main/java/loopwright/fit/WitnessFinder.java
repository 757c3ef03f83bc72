package loopwright.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Pump;
import loopwright.catalog.part.Reservoir;
import loopwright.catalog.part.Supply;
import loopwright.fit.Scene.Hung;
import loopwright.fit.Scene.Option;
import loopwright.fit.Scene.Setting;
import loopwright.fit.SceneMaker.Knowledge;
import loopwright.fit.rules.Chosen;
import loopwright.fit.rules.Role;
import loopwright.quantity.IntervalSet;

/**
 * Finds the best way to have a layout with a mod set: over all placings and positions in which it stands as strictly as
 * the search asks, the largest smallest margin at nominal dimensions; ties go to the smallest coordinates, then to the
 * first placing. Every way is re-checked before it is handed out.
 */
public final class WitnessFinder {

    private final FitSearch search;
    private final Strictness strictness;
    private final WayDemands demands;
    private final WayDemands margins;
    private final Recheck recheck;
    private final Map<ModSet, Scene> scenes = new HashMap<>();
    private final IdentityHashMap<Setting, Map<List<Integer>, Still>> stills = new IdentityHashMap<>();

    /** A finder that shares what a search has already made. */
    public WitnessFinder(FitSearch search) {
        this.search = search;
        PairTable pairs = search.maker().pairs();
        this.strictness = pairs.strictness();
        this.demands = new WayDemands(pairs, strictness);
        this.margins = strictness == Strictness.NOMINAL ? demands : new WayDemands(pairs, Strictness.NOMINAL);
        this.recheck = new Recheck(search.fitCase().chassis());
    }

    /** What does not slide, and the gaps among it. */
    private record Still(List<Standing> bodies, List<List<Gap>> gaps, boolean tight) {}

    /** A candidate: a setting and a hang a stack. */
    private record Way(Scene scene, Setting setting, List<Hang> hangs) {}

    /** The best so far: its margin and positions. */
    private static final class Best {
        private final Way way;
        private final int marginHmm;
        private final int[] positions;

        private Best(Way way, int marginHmm, int[] positions) {
            this.way = way;
            this.marginHmm = marginHmm;
            this.positions = positions;
        }
    }

    /**
     * The best way.
     *
     * @throws IllegalStateException if the layout does not fit with the set, or the re-check finds a clash: our own bug
     */
    public Witness witness(Layout layout, ModSet mods) {
        return find(layout, mods)
                .orElseThrow(() -> new IllegalStateException("no way for layout " + layout.text() + " with " + mods));
    }

    /** The best way, if the layout fits with the set. */
    public Optional<Witness> find(Layout layout, ModSet mods) {
        return find(layout, mods, parts -> true);
    }

    /** The best way with parts of a certain room, if there is one. */
    Optional<Witness> find(Layout layout, ModSet mods, Predicate<PartSet> parts) {
        Optional<Best> best = Optional.empty();
        for (Way way : ways(layout, scene(mods), parts)) {
            Optional<Best> better = improve(way, best);
            if (better.isPresent() && (best.isEmpty() || beats(better.get(), best.get()))) {
                best = better;
            }
        }
        return best.map(b -> told(layout, mods, b));
    }

    private Scene scene(ModSet mods) {
        return scenes.computeIfAbsent(
                mods,
                m -> search.worlds().stream()
                        .filter(w -> w.mods().equals(m))
                        .findFirst()
                        .map(w -> search.maker().scene(w, Knowledge.KNOWN_ONLY))
                        .orElseThrow(() -> new IllegalArgumentException("not a valid mod set: " + m)));
    }

    private List<Way> ways(Layout layout, Scene scene, Predicate<PartSet> parts) {
        List<Option> options = options(layout, scene);
        List<Way> out = new ArrayList<>();
        if (options.size() == layout.stacks().size()) {
            BitSet possible = (BitSet) options.get(0).settings().clone();
            options.forEach(o -> possible.and(o.settings()));
            possible.stream()
                    .mapToObj(scene.settings()::get)
                    .filter(setting -> parts.test(setting.parts()))
                    .forEach(setting -> addWays(out, scene, setting, options, List.of()));
        }
        return out;
    }

    private List<Option> options(Layout layout, Scene scene) {
        List<Option> options = new ArrayList<>();
        for (Layout.Stack stack : layout.stacks()) {
            int shape = search.fitCase().shapes().all().indexOf(stack.shape());
            scene.options().get(stack.frame().index()).stream()
                    .filter(o -> o.shape() == shape)
                    .forEach(options::add);
        }
        return options;
    }

    private static void addWays(List<Way> out, Scene scene, Setting setting, List<Option> options, List<Hang> picked) {
        if (picked.size() == options.size()) {
            out.add(new Way(scene, setting, picked));
            return;
        }
        for (Hung hung : options.get(picked.size()).hung()) {
            List<Hang> more = new ArrayList<>(picked);
            more.add(hung.hang());
            addWays(out, scene, setting, options, List.copyOf(more));
        }
    }

    private static boolean beats(Best candidate, Best best) {
        if (candidate.marginHmm != best.marginHmm) {
            return candidate.marginHmm > best.marginHmm;
        }
        return Arrays.compare(candidate.positions, best.positions) < 0;
    }

    /** A better way than the best so far, or one as good: with a smaller margin it is not looked for. */
    private Optional<Best> improve(Way way, Optional<Best> best) {
        int floor = best.map(b -> b.marginHmm).orElse(strictness.leastMarginHmm());
        int ceiling = Math.min(way.setting().marginHmm(), margins.most(way.hangs(), way.setting(), way.scene()));
        boolean refused = strictness != Strictness.NOMINAL && !mayStand(way);
        if (refused || ceiling < floor || (ceiling == floor && best.isPresent() && isNoSmaller(way, best.get()))) {
            return Optional.empty();
        }
        Positions positions = positions(way, ceiling);
        if (positions.feasible(ceiling)) {
            return positions.least(ceiling).map(p -> new Best(way, ceiling, p));
        }
        if (!positions.feasible(floor)) {
            return Optional.empty();
        }
        int margin = positions.largestMargin(floor, ceiling - 1);
        return positions.least(margin).map(p -> new Best(way, margin, p));
    }

    /** Whether not even the smallest coordinates of the way are smaller than those of the best. */
    private boolean isNoSmaller(Way way, Best best) {
        int[] least = Arrays.stream(search.maker().pairs().domains(way.hangs()))
                .mapToInt(IntervalSet::min)
                .toArray();
        return Arrays.compare(least, best.positions) >= 0;
    }

    /** Positions of a way, asked about margins up to a ceiling. */
    private Positions positions(Way way, int ceilingHmm) {
        return new Positions(
                search.maker().pairs().domains(way.hangs()),
                margins.open(way.hangs(), way.setting(), way.scene(), ceilingHmm),
                strictness == Strictness.NOMINAL ? List.of() : asked(way));
    }

    /** What must hold of a way, whatever its margin. */
    private List<int[]> asked(Way way) {
        return demands.open(way.hangs(), way.setting(), way.scene(), 0);
    }

    /** Whether no pair by itself keeps a way from standing. */
    private boolean mayStand(Way way) {
        return demands.most(way.hangs(), way.setting(), way.scene()) >= 0;
    }

    private Witness told(Layout layout, ModSet mods, Best best) {
        List<Standing> sliding = new ArrayList<>();
        for (Hang hang : best.way.hangs()) {
            int at = 2 * hang.frame().index();
            sliding.add(Standing.at(hang, best.positions[at], best.positions[at + 1]));
        }
        Still still = still(best.way);
        List<Gap> gaps = new ArrayList<>(recheck.gaps(still.bodies(), still.gaps(), sliding));
        gaps.sort(Comparator.comparingInt(Gap::marginHmm));
        if (gaps.get(0).marginHmm() != best.marginHmm) {
            throw new IllegalStateException("re-check of " + layout.text() + " with "
                    + mods.ids(search.fitCase().chassis()) + " finds a margin of " + gaps.get(0) + ", the search had "
                    + best.marginHmm);
        }
        if (strictness == Strictness.NO_TIGHT && isTight(still, sliding, recheck)) {
            throw new IllegalStateException("re-check of " + layout.text() + " finds a tight place");
        }
        return new Witness(
                mods, best.way.setting().parts().example(), places(best.way.setting()), stacks(layout, best), gaps);
    }

    private static boolean isTight(Still still, List<Standing> sliding, Recheck recheck) {
        List<Standing> all = new ArrayList<>(still.bodies());
        all.addAll(sliding);
        return still.tight() || !recheck.noneTight(sliding, all);
    }

    /** What does not slide is measured once for all layouts that share it. */
    private Still still(Way way) {
        return stills.computeIfAbsent(way.setting(), s -> new HashMap<>())
                .computeIfAbsent(way.scene().builtIn(), builtIn -> {
                    List<Standing> standing = new ArrayList<>();
                    Bodies bodies = search.maker().bodies();
                    builtIn.forEach(b -> standing.add(Standing.still(bodies.get(b))));
                    way.setting().bodies().forEach(b -> standing.add(Standing.still(bodies.get(b))));
                    boolean tight = strictness == Strictness.NO_TIGHT && !recheck.noneTight(standing, standing);
                    return new Still(standing, recheck.among(standing), tight);
                });
    }

    private List<Witness.At> stacks(Layout layout, Best best) {
        List<IntervalSet> slides = new ArrayList<>();
        Setting setting = best.way.setting();
        List<Way> ways = new ArrayList<>();
        addWays(ways, best.way.scene(), setting, options(layout, best.way.scene()), List.of());
        for (Way way : ways) {
            if (mayStand(way)) {
                List<IntervalSet> more =
                        new Positions(search.maker().pairs().domains(way.hangs()), asked(way)).slides(0);
                for (int i = 0; i < more.size(); i++) {
                    if (slides.size() <= i) {
                        slides.add(more.get(i));
                    } else {
                        slides.set(i, slides.get(i).or(more.get(i)));
                    }
                }
            }
        }
        List<Witness.At> out = new ArrayList<>();
        for (Layout.Stack stack : layout.stacks()) {
            int at = 2 * stack.frame().index();
            out.add(new Witness.At(
                    stack, best.positions[at], best.positions[at + 1], slides.get(at), slides.get(at + 1)));
        }
        return out;
    }

    private List<Witness.InPlace> places(Setting setting) {
        List<Place> places = search.fitCase().chassis().inside().places();
        PlaceModel.Placing placing = setting.placing();
        Chosen parts = setting.parts().example();
        List<Witness.InPlace> out = new ArrayList<>();
        out.add(new Witness.InPlace(
                "supply",
                parts.the(Role.SUPPLY, Supply.class).id(),
                places.get(placing.supply()).id()));
        for (int k = 0; k < placing.drives().size(); k++) {
            out.add(new Witness.InPlace(
                    "drive " + (k + 1),
                    search.fitCase().placedDrives().get(k).id(),
                    places.get(placing.drives().get(k)).id()));
        }
        out.add(new Witness.InPlace(
                "pump",
                parts.the(Role.PUMP, Pump.class).id(),
                places.get(placing.pump()).id()));
        parts.find(Role.RESERVOIR, Reservoir.class)
                .ifPresent(r -> out.add(new Witness.InPlace(
                        "reservoir", r.id(), places.get(placing.reservoir()).id())));
        return out;
    }
}

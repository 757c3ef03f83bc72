package loopwright.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
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
 * Finds the best way to have a layout with a mod set: over all placings and positions, the largest smallest margin;
 * ties go to the smallest coordinates, then to the first placing. Every way is re-checked before it is handed out.
 */
public final class WitnessFinder {

    private final FitSearch search;
    private final Map<ModSet, Scene> scenes = new HashMap<>();

    /** A finder that shares what a search has already made. */
    public WitnessFinder(FitSearch search) {
        this.search = search;
    }

    /** A candidate: a setting and a hang a stack. */
    private record Way(Scene scene, Setting setting, List<Hang> hangs) {}

    /** The best so far: its margin and positions. */
    private record Best(Way way, int marginHmm, List<Integer> positions) {}

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
        for (Way way : ways(layout, scene(mods))) {
            if (!parts.test(way.setting().parts())) {
                continue;
            }
            Optional<Best> better = improve(way, best.map(Best::marginHmm).orElse(0));
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

    private List<Way> ways(Layout layout, Scene scene) {
        List<Option> options = new ArrayList<>();
        for (Layout.Stack stack : layout.stacks()) {
            int shape = search.fitCase().shapes().all().indexOf(stack.shape());
            scene.options().get(stack.frame().index()).stream()
                    .filter(o -> o.shape() == shape)
                    .forEach(options::add);
        }
        List<Way> out = new ArrayList<>();
        if (options.size() == layout.stacks().size()) {
            for (Setting setting : scene.settings()) {
                addWays(out, scene, setting, options, List.of());
            }
        }
        return out;
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
        if (candidate.marginHmm() != best.marginHmm()) {
            return candidate.marginHmm() > best.marginHmm();
        }
        return Arrays.compare(
                        candidate.positions().toArray(Integer[]::new),
                        best.positions().toArray(Integer[]::new))
                < 0;
    }

    private Optional<Best> improve(Way way, int floor) {
        int ceiling = way.setting().marginHmm();
        Positions positions = positions(way);
        if (ceiling < floor || !positions.feasible(floor)) {
            return Optional.empty();
        }
        int margin = positions.largestMargin(floor, ceiling);
        return positions
                .least(margin)
                .map(p -> new Best(way, margin, Arrays.stream(p).boxed().toList()));
    }

    private Positions positions(Way way) {
        PairTable pairs = search.maker().pairs();
        List<int[]> out = new ArrayList<>();
        List<Hang> hangs = way.hangs();
        for (int i = 0; i < hangs.size(); i++) {
            Hang hang = hangs.get(i);
            out.addAll(pairs.wallSides(hang));
            way.setting().bodies().forEach(body -> out.addAll(pairs.sides(hang, body)));
            way.scene().builtIn().forEach(body -> out.addAll(pairs.sides(hang, body)));
            for (int j = 0; j < i; j++) {
                out.addAll(pairs.sides(hangs.get(j), hang));
            }
        }
        return new Positions(pairs.domains(hangs), out);
    }

    private Witness told(Layout layout, ModSet mods, Best best) {
        List<Standing> standing = new ArrayList<>();
        Bodies bodies = search.maker().bodies();
        best.way().scene().builtIn().forEach(b -> standing.add(Standing.still(bodies.get(b))));
        best.way().setting().bodies().forEach(b -> standing.add(Standing.still(bodies.get(b))));
        for (Hang hang : best.way().hangs()) {
            int at = 2 * hang.frame().index();
            standing.add(
                    Standing.at(hang, best.positions().get(at), best.positions().get(at + 1)));
        }
        List<Gap> gaps =
                new ArrayList<>(new Recheck(search.fitCase().chassis().shell().interior()).gaps(standing));
        gaps.sort(Comparator.comparingInt(Gap::marginHmm));
        if (gaps.get(0).marginHmm() != best.marginHmm()) {
            throw new IllegalStateException("re-check of " + layout.text() + " with "
                    + mods.ids(search.fitCase().chassis()) + " finds a margin of " + gaps.get(0) + ", the search had "
                    + best.marginHmm());
        }
        return new Witness(
                mods, best.way().setting().parts().example(), places(best.way().setting()), stacks(layout, best), gaps);
    }

    private List<Witness.At> stacks(Layout layout, Best best) {
        List<IntervalSet> slides = new ArrayList<>();
        for (Way way : ways(layout, best.way().scene())) {
            if (way.setting().equals(best.way().setting())) {
                List<IntervalSet> more = positions(way).slides(0);
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
                    stack, best.positions().get(at), best.positions().get(at + 1), slides.get(at), slides.get(at + 1)));
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

package loopwright.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import loopwright.fit.Scene.Option;
import loopwright.fit.SceneMaker.Knowledge;

/**
 * Asks of single builds whether they fit: stacks and bare rows of fans, a mod set, and parts of a certain room.
 *
 * <p>Only what is known fits. Answers are kept.
 */
public final class FitQuery {

    private final FitSearch search;
    private final WitnessFinder finder;
    private final Map<ModSet, Indexed> scenes = new HashMap<>();
    private final Map<Question, Boolean> answers = new HashMap<>();

    /** Queries about builds: bare rows of fans, mods that only change air, parts of any room. */
    public static FitQuery ofBuilds(FitCase fitCase, FitWish wish, BooleanSupplier interrupted) {
        return new FitQuery(FitSearch.ofBuilds(fitCase, wish, interrupted));
    }

    /** Queries about layouts: the mod sets and the smallest parts of a search. */
    public FitQuery(FitSearch search) {
        this.search = search;
        this.finder = new WitnessFinder(search);
    }

    /** The case, in which bare rows of fans may hang too. */
    public FitCase fitCase() {
        return search.fitCase();
    }

    /** Every valid set of mods that matter for room or air, smaller ones first. */
    public List<ModSet> validSets() {
        return search.worlds().stream().map(ModModel.ModWorld::mods).toList();
    }

    /** Every choice of parts that goes together, grouped by the room they take. */
    public List<PartSet> partSets() {
        return search.maker().partSets();
    }

    /** The bare rows of fans that a mount can carry with a mod set. */
    public List<Layout.Stack> fanRows(MountFrame frame, ModSet mods) {
        List<Layout.Stack> out = new ArrayList<>();
        for (Option option : scene(mods).scene().options().get(frame.index())) {
            Shape shape = search.fitCase().shapes().all().get(option.shape());
            if (!shape.arrangement().hasRadiator()) {
                out.add(new Layout.Stack(frame, shape));
            }
        }
        return out;
    }

    /** Whether stacks, in the order of their mounts, fit with a mod set and parts of a certain room. */
    public boolean fits(List<Layout.Stack> stacks, ModSet mods, PartSet parts) {
        return answers.computeIfAbsent(
                new Question(parts, mods, stacks.stream().map(FitQuery::hung).toList()), q -> ask(stacks, mods, parts));
    }

    /** A shape on a mount, cheap to compare. */
    private record HungShape(int mount, Shape shape) {}

    private static HungShape hung(Layout.Stack stack) {
        return new HungShape(stack.frame().index(), stack.shape());
    }

    /** What was asked; part sets are told apart by identity, there is one object of each. */
    private record Question(PartSet parts, ModSet mods, List<HungShape> stacks) {}

    private boolean ask(List<Layout.Stack> stacks, ModSet mods, PartSet parts) {
        Indexed scene = scene(mods);
        BitSet settings = (BitSet) scene.with(parts).clone();
        List<Option> chosen = new ArrayList<>();
        for (Layout.Stack stack : stacks) {
            Optional<Option> option = scene.option(stack);
            if (option.isEmpty()) {
                return false;
            }
            chosen.add(option.get());
            settings.and(option.get().settings());
        }
        return new LayoutWalk(search.maker().pairs(), scene.scene(), List.of()).stands(chosen, settings);
    }

    /** A scene, with its settings by parts and its options by shape. */
    private record Indexed(Scene scene, Map<PartSet, BitSet> byParts, Map<HungShape, Option> byShape) {

        static Indexed of(Scene scene, List<Shape> shapes) {
            Map<PartSet, BitSet> byParts = new HashMap<>();
            for (int i = 0; i < scene.settings().size(); i++) {
                byParts.computeIfAbsent(scene.settings().get(i).parts(), p -> new BitSet())
                        .set(i);
            }
            Map<HungShape, Option> byShape = new HashMap<>();
            scene.options()
                    .forEach(mount ->
                            mount.forEach(o -> byShape.put(new HungShape(o.mount(), shapes.get(o.shape())), o)));
            return new Indexed(scene, byParts, byShape);
        }

        BitSet with(PartSet parts) {
            return byParts.getOrDefault(parts, new BitSet());
        }

        Optional<Option> option(Layout.Stack stack) {
            return Optional.ofNullable(byShape.get(hung(stack)));
        }
    }

    private Indexed scene(ModSet mods) {
        return scenes.computeIfAbsent(
                mods,
                m -> search.worlds().stream()
                        .filter(w -> w.mods().equals(m))
                        .findFirst()
                        .map(w -> search.maker().scene(w, Knowledge.KNOWN_ONLY))
                        .map(scene ->
                                Indexed.of(scene, search.fitCase().shapes().all()))
                        .orElseThrow(() -> new IllegalArgumentException("not a valid mod set: " + m)));
    }

    /** The best way for stacks to stand, with parts of a certain room. */
    public Optional<Witness> witness(List<Layout.Stack> stacks, ModSet mods, PartSet parts) {
        return finder.find(new Layout(search.fitCase().chassis().id(), stacks), mods, p -> p.equals(parts));
    }
}

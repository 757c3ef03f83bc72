package loopwright.fit;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.fit.Scene.Option;
import loopwright.fit.SceneMaker.Knowledge;

/**
 * Asks of single builds whether they fit: stacks and bare rows of fans, a mod set, and parts of a certain room.
 *
 * <p>Only what is known fits. Answers are kept.
 */
public final class FitQuery {

    private final FitSearch search;
    private final Map<ModSet, Scene> scenes = new HashMap<>();
    private final Map<String, Boolean> answers = new HashMap<>();

    /** Queries about a case. */
    public FitQuery(FitCase fitCase, FitWish wish) {
        this.search = FitSearch.ofBuilds(fitCase, wish);
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
        for (Option option : scene(mods).options().get(frame.index())) {
            Shape shape = search.fitCase().shapes().all().get(option.shape());
            if (!shape.arrangement().hasRadiator()) {
                out.add(new Layout.Stack(frame, shape));
            }
        }
        return out;
    }

    /** Whether stacks, in the order of their mounts, fit with a mod set and parts of a certain room. */
    public boolean fits(List<Layout.Stack> stacks, ModSet mods, PartSet parts) {
        String question = search.maker().partSets().indexOf(parts) + "|" + mods.bits() + "|" + text(stacks);
        return answers.computeIfAbsent(question, q -> ask(stacks, mods, parts));
    }

    private static String text(List<Layout.Stack> stacks) {
        StringBuilder out = new StringBuilder();
        stacks.forEach(s -> out.append(s.frame().index()).append(s.shape().text()));
        return out.toString();
    }

    private boolean ask(List<Layout.Stack> stacks, ModSet mods, PartSet parts) {
        Scene scene = scene(mods);
        BitSet settings = new BitSet();
        for (int i = 0; i < scene.settings().size(); i++) {
            settings.set(i, scene.settings().get(i).parts().equals(parts));
        }
        List<Option> chosen = new ArrayList<>();
        for (Layout.Stack stack : stacks) {
            Optional<Option> option = option(scene, stack);
            if (option.isEmpty()) {
                return false;
            }
            chosen.add(option.get());
            settings.and(option.get().settings());
        }
        return new LayoutWalk(search.maker().pairs(), scene, List.of()).stands(chosen, settings);
    }

    private Optional<Option> option(Scene scene, Layout.Stack stack) {
        List<Shape> shapes = search.fitCase().shapes().all();
        return scene.options().get(stack.frame().index()).stream()
                .filter(o -> shapes.get(o.shape()).equals(stack.shape()))
                .findFirst();
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

    /** The best way for stacks to stand, with parts of a certain room. */
    public Optional<Witness> witness(List<Layout.Stack> stacks, ModSet mods, PartSet parts) {
        return new WitnessFinder(search)
                .find(new Layout(search.fitCase().chassis().id(), stacks), mods, p -> p.equals(parts));
    }
}

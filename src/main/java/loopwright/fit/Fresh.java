package loopwright.fit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.ModModel.ModWorld;
import loopwright.fit.Scene.Option;
import loopwright.fit.SceneMaker.Knowledge;

/**
 * What is new with a mod set, mount by mount.
 *
 * <p>Take a mod that changes one mount and nothing else, and that no other mod of the set requires: the set without it
 * is valid, and everything but that mount is the same. So a layout that needs the whole set carries on that mount
 * something which hangs there only thanks to the mod. Everything else is found with a smaller set, and is not walked
 * again.
 */
final class Fresh {

    private final FitCase fitCase;
    private final SceneMaker maker;
    private final FitWish wish;

    Fresh(FitCase fitCase, SceneMaker maker, FitWish wish) {
        this.fitCase = fitCase;
        this.maker = maker;
        this.wish = wish;
    }

    /** What a mount may carry in a walk. */
    record Choice(List<Option> options, boolean mayBeEmpty) {}

    List<Choice> choices(ModWorld world, Scene scene, Knowledge knowledge) {
        List<Choice> out = new ArrayList<>();
        for (MountFrame frame : fitCase.frames()) {
            List<Option> left = scene.options().get(frame.index());
            boolean mayBeEmpty = true;
            for (ModSet smaller : without(frame, world.mods())) {
                left = newIn(left, maker.options(frame, smaller, world, knowledge));
                mayBeEmpty = false;
            }
            out.add(new Choice(left, mayBeEmpty));
        }
        return out;
    }

    /** The valid sets that lack one mod which is about this mount alone. */
    private List<ModSet> without(MountFrame frame, ModSet mods) {
        List<ModSet> out = new ArrayList<>();
        for (int i = 0; i < fitCase.chassis().mods().size(); i++) {
            Mod mod = fitCase.chassis().mods().get(i);
            boolean removable = mods.has(i)
                    && !wish.with().contains(mod.id())
                    && mods.mods(fitCase.chassis()).stream()
                            .noneMatch(m -> m.rules().requires().contains(mod.id()));
            Optional<String> only = ModRules.onlyMountOf(mod);
            if (removable && only.isPresent() && only.get().equals(frame.mount().id())) {
                out.add(new ModSet(mods.bits() & ~(1L << i)));
            }
        }
        return out;
    }

    private static List<Option> newIn(List<Option> options, List<Option> before) {
        List<Option> out = new ArrayList<>();
        for (Option option : options) {
            Optional<Option> old =
                    before.stream().filter(b -> b.shape() == option.shape()).findFirst();
            if (old.isEmpty() || !hangs(old.get()).containsAll(hangs(option))) {
                out.add(option);
            }
        }
        return out;
    }

    private static Set<Integer> hangs(Option option) {
        Set<Integer> out = new HashSet<>();
        option.hung().forEach(h -> out.add(h.hang().id()));
        return out;
    }
}

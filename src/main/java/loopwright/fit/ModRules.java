package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToIntFunction;
import loopwright.catalog.brief.BriefLimits.ModLimits;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.rules.ModRule;

/** The rules on mods that a chassis, a brief and a wish make together. */
public final class ModRules {

    private ModRules() {}

    /** Every rule, in the chassis's order, then the brief's, then the wish's. */
    public static List<ModRule> of(FitCase fitCase, FitWish wish) {
        List<ModRule> out = new ArrayList<>();
        for (Mod mod : fitCase.chassis().mods()) {
            for (String required : mod.rules().requires()) {
                // A file that names a mod its chassis lacks is refused on reading; made by hand, it means "never".
                out.add(
                        has(fitCase.chassis(), required)
                                ? new ModRule.Requires(mod.id(), required)
                                : new ModRule.Forbidden(mod.id()));
            }
            mod.rules().excludes().stream()
                    .filter(e -> has(fitCase.chassis(), e))
                    .forEach(e -> out.add(new ModRule.Excludes(mod.id(), e)));
        }
        ModLimits limits = fitCase.brief().limits().mods();
        for (Mod mod : fitCase.chassis().mods()) {
            if (limits.forbid().contains(mod.id()) || wish.without().contains(mod.id())) {
                out.add(new ModRule.Forbidden(mod.id()));
            }
            if (wish.with().contains(mod.id())) {
                out.add(new ModRule.Fixed(mod.id()));
            }
        }
        limits.visibleCutsMax().ifPresent(n -> out.add(new ModRule.CutsAtMost(n, true)));
        limits.cutsMax().ifPresent(n -> out.add(new ModRule.CutsAtMost(n, false)));
        return List.copyOf(out);
    }

    /** Fewest mods first, then fewest cuts that show, fewest cuts, fewest minutes, and the chassis's order. */
    static Comparator<ModSet> gentlestFirst(Chassis chassis) {
        return Comparator.comparingInt(ModSet::size)
                .thenComparingInt(s -> sum(s, chassis, m -> m.look().visibleCuts()))
                .thenComparingInt(s ->
                        sum(s, chassis, m -> m.look().visibleCuts() + m.look().hiddenCuts()))
                .thenComparingInt(s ->
                        sum(s, chassis, m -> m.work().labourMin() + m.work().paintMin()))
                .thenComparing(s -> s);
    }

    private static int sum(ModSet set, Chassis chassis, ToIntFunction<Mod> of) {
        return set.mods(chassis).stream().mapToInt(of).sum();
    }

    private static boolean has(Chassis chassis, String mod) {
        return chassis.mods().stream().anyMatch(m -> m.id().equals(mod));
    }

    /** The mods that can be in a needed set: those that change room, seats or air, those they require, those fixed. */
    static ModSet thatMatter(FitCase fitCase, FitWish wish) {
        Chassis chassis = fitCase.chassis();
        long bits = 0;
        for (int i = 0; i < chassis.mods().size(); i++) {
            Mod mod = chassis.mods().get(i);
            if (changesRoom(mod.effect()) || wish.with().contains(mod.id())) {
                bits |= 1L << i;
            }
        }
        return withRequired(chassis, bits);
    }

    /** The mods that can be worth doing: those that matter for room, and those that change what air passes. */
    static ModSet thatMatterForBuilds(FitCase fitCase, FitWish wish) {
        long bits = thatMatter(fitCase, wish).bits();
        for (int i = 0; i < fitCase.chassis().mods().size(); i++) {
            bits |= fitCase.chassis().mods().get(i).effect().airways().isEmpty() ? 0 : 1L << i;
        }
        return withRequired(fitCase.chassis(), bits);
    }

    /** Some mods and all that they require. */
    static ModSet withRequired(Chassis chassis, long wanted) {
        long bits = wanted;
        boolean grown = true;
        while (grown) {
            long before = bits;
            for (Mod mod : new ModSet(before).mods(chassis)) {
                for (int i = 0; i < chassis.mods().size(); i++) {
                    bits |= mod.rules()
                                    .requires()
                                    .contains(chassis.mods().get(i).id())
                            ? 1L << i
                            : 0;
                }
            }
            grown = bits != before;
        }
        return new ModSet(bits);
    }

    /** Where the catalogue has a mod. */
    static String address(Chassis chassis, Mod mod) {
        return chassis.id() + ".mods." + mod.id();
    }

    /** The mods that change what can hang on a mount. */
    static ModSet aboutMount(Chassis chassis, String mount) {
        long bits = 0;
        for (int i = 0; i < chassis.mods().size(); i++) {
            bits |= mountsOf(chassis.mods().get(i).effect()).contains(mount) ? 1L << i : 0;
        }
        return new ModSet(bits);
    }

    /** The one mount that a mod is about, if it changes nothing else. */
    public static Optional<String> onlyMountOf(Mod mod) {
        Mod.Effect effect = mod.effect();
        Set<String> mounts = mountsOf(effect);
        boolean nothingElse = effect.removes().isEmpty()
                && effect.adds().isEmpty()
                && effect.opensPlaces().isEmpty()
                && effect.closesPlaces().isEmpty();
        return nothingElse && mounts.size() == 1 ? mounts.stream().findFirst() : Optional.empty();
    }

    private static Set<String> mountsOf(Mod.Effect effect) {
        Set<String> out = new TreeSet<>();
        effect.seats().forEach(s -> out.add(s.mount()));
        effect.covers().forEach(c -> out.add(c.mount()));
        effect.airways().forEach(a -> out.add(a.mount()));
        return out;
    }

    private static boolean changesRoom(Mod.Effect effect) {
        return !effect.removes().isEmpty()
                || !effect.adds().isEmpty()
                || !effect.opensPlaces().isEmpty()
                || !effect.closesPlaces().isEmpty()
                || !effect.seats().isEmpty()
                || !effect.covers().isEmpty()
                || effect.airways().stream()
                        .anyMatch(a -> a.cut().isPresent()
                                || a.freeArea().isPresent()
                                || a.addedDepthMm().isPresent());
    }
}

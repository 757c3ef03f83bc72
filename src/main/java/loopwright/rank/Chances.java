package loopwright.rank;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.ModRules;
import loopwright.fit.ModSet;

/**
 * The mod sets worth looking at for a layout.
 *
 * <p>A mod that changes one mount and nothing else, and that no other mod of the set requires, only costs when the build
 * carries nothing on that mount: the set without it is valid and gives the same build for less. So such mods are looked
 * at only on the layout's own mounts, and on one more where a bare row of fans may hang.
 */
final class Chances {

    private final Chassis chassis;
    private final List<ModSet> valid;
    private final Map<ModSet, Set<String>> lonely = new HashMap<>();
    private final Map<Set<String>, List<Chance>> byUsed = new HashMap<>();

    Chances(Chassis chassis, List<ModSet> valid) {
        this.chassis = chassis;
        this.valid = valid;
    }

    /**
     * A mod set for a layout.
     *
     * @param fansOn the mount that must carry a bare row of fans for the set to be worth it; absent: any, or none
     */
    record Chance(ModSet mods, Optional<String> fansOn) {}

    /** The sets worth looking at for layouts that take the same parts on the same mounts. */
    List<Chance> of(List<FoundLayout> alike) {
        Set<String> used = new TreeSet<>();
        alike.get(0).layout().stacks().forEach(s -> used.add(s.frame().mount().id()));
        Set<ModSet> needed = new HashSet<>();
        alike.forEach(f -> needed.addAll(f.needed()));
        return byUsed.computeIfAbsent(used, this::worthIt).stream()
                .filter(c -> needed.stream().anyMatch(n -> n.isSubsetOf(c.mods())))
                .toList();
    }

    /** Those of some layouts that may fit with a set. */
    static List<Layout> mayFit(List<FoundLayout> alike, ModSet set) {
        return alike.stream()
                .filter(f -> f.needed().stream().anyMatch(n -> n.isSubsetOf(set)))
                .map(FoundLayout::layout)
                .toList();
    }

    private List<Chance> worthIt(Set<String> used) {
        List<Chance> out = new ArrayList<>();
        for (ModSet set : valid) {
            Set<String> idle = idleMounts(set, used);
            if (idle.size() <= 1) {
                out.add(new Chance(set, idle.stream().findFirst()));
            }
        }
        return List.copyOf(out);
    }

    private Set<String> idleMounts(ModSet set, Set<String> used) {
        Set<String> out = new TreeSet<>(lonely.computeIfAbsent(set, this::mountsOfLonelyMods));
        out.removeAll(used);
        return out;
    }

    /** Mounts that a mod of the set changes which changes nothing else and which no other mod of the set requires. */
    private Set<String> mountsOfLonelyMods(ModSet set) {
        Set<String> out = new TreeSet<>();
        List<Mod> mods = set.mods(chassis);
        for (Mod mod : mods) {
            boolean required = mods.stream().anyMatch(m -> m.rules().requires().contains(mod.id()));
            if (!required) {
                ModRules.onlyMountOf(mod).ifPresent(out::add);
            }
        }
        return out;
    }
}

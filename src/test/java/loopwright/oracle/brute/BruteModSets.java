package loopwright.oracle.brute;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import loopwright.catalog.brief.BriefLimits;
import loopwright.catalog.chassis.Mod;

/** Every valid mod set, by walking all subsets. */
final class BruteModSets {

    private BruteModSets() {}

    static List<SortedSet<String>> valid(List<Mod> mods, BriefLimits.ModLimits limits) {
        List<SortedSet<String>> out = new ArrayList<>();
        for (int bits = 0; bits < 1 << mods.size(); bits++) {
            SortedSet<String> ids = new TreeSet<>();
            for (int i = 0; i < mods.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    ids.add(mods.get(i).id());
                }
            }
            if (isValid(ids, mods, limits)) {
                out.add(ids);
            }
        }
        return out;
    }

    private static boolean isValid(SortedSet<String> ids, List<Mod> mods, BriefLimits.ModLimits limits) {
        int visible = 0;
        int all = 0;
        for (Mod mod : mods) {
            if (!ids.contains(mod.id())) {
                continue;
            }
            if (limits.forbid().contains(mod.id())
                    || !ids.containsAll(mod.rules().requires())) {
                return false;
            }
            for (String other : mod.rules().excludes()) {
                if (ids.contains(other)) {
                    return false;
                }
            }
            visible += mod.look().visibleCuts();
            all += mod.look().visibleCuts() + mod.look().hiddenCuts();
        }
        return visible <= limits.visibleCutsMax().orElse(Integer.MAX_VALUE)
                && all <= limits.cutsMax().orElse(Integer.MAX_VALUE);
    }
}

package loopwright.paper;

import java.util.List;
import java.util.stream.Collectors;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.ModSet;

/** A mod set in the builder's words. */
final class ModWords {

    private ModWords() {}

    /** What has to be done, by title. */
    static String titles(ModSet mods, Chassis chassis) {
        return mods.size() == 0
                ? "nothing, as delivered"
                : mods.mods(chassis).stream().map(Mod::title).collect(Collectors.joining("; "));
    }

    /** The ids, sorted, or a dash. */
    static String ids(ModSet mods, Chassis chassis) {
        List<String> ids = mods.ids(chassis);
        return ids.isEmpty() ? "-" : String.join("+", ids);
    }

    /** Cuts that show. */
    static int visibleCuts(ModSet mods, Chassis chassis) {
        return mods.mods(chassis).stream().mapToInt(m -> m.look().visibleCuts()).sum();
    }

    /** Cuts that do not. */
    static int hiddenCuts(ModSet mods, Chassis chassis) {
        return mods.mods(chassis).stream().mapToInt(m -> m.look().hiddenCuts()).sum();
    }

    /** Both counts in words. */
    static String cuts(ModSet mods, Chassis chassis) {
        int seen = visibleCuts(mods, chassis);
        int hidden = hiddenCuts(mods, chassis);
        if (seen + hidden == 0) {
            return "cuts: none";
        }
        return "cuts: " + (seen == 0 ? "none" : Integer.toString(seen)) + " seen, " + hidden + " hidden";
    }
}

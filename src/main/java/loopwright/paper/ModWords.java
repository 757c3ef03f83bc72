package loopwright.paper;

import java.util.List;
import java.util.stream.Collectors;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.fit.ModSet;
import loopwright.rank.ModBill;

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

    /** What stays of work: {@code no way back, 1 cut seen, 2 hidden}. */
    static String traces(ModBill bill) {
        String wayBack = switch (bill.wayBack()) {
            case YES -> "way back";
            case PARTLY -> "way back partly";
            case NO -> "no way back";
        };
        return wayBack + ", " + cuts(bill.visibleCuts(), bill.hiddenCuts());
    }

    private static String cuts(int seen, int hidden) {
        if (seen + hidden == 0) {
            return "no cuts";
        }
        int first = seen > 0 ? seen : hidden;
        String cuts = first + (first == 1 ? " cut " : " cuts ");
        return seen == 0 ? cuts + "not seen" : cuts + "seen" + (hidden > 0 ? ", " + hidden + " not" : "");
    }
}

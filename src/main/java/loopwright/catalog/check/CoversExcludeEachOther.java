package loopwright.catalog.check;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.read.Problems;

/** A mount has at most one raised cover at a time. */
final class CoversExcludeEachOther implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            List<Mod> mods = chassis.value().mods();
            for (int i = 0; i < mods.size() && mods.size() <= Prerequisites.MODS_MAX; i++) {
                twiceInOne(chassis, i, problems);
                for (int j = 0; j < i; j++) {
                    pair(chassis, mods.get(j), i, problems);
                }
            }
        }
    }

    private static void twiceInOne(Items.Placed<Chassis> chassis, int index, Problems problems) {
        Set<String> seen = new TreeSet<>();
        List<RaisedCover> covers = chassis.value().mods().get(index).effect().covers();
        for (int i = 0; i < covers.size(); i++) {
            if (!seen.add(covers.get(i).mount())) {
                problems.add(chassis.item()
                        .problem(
                                "mods[" + index + "].effect.covers[" + i + "].mount",
                                "a second raised cover on \"" + covers.get(i).mount() + "\"",
                                "at most one a mount",
                                ""));
            }
        }
    }

    private static void pair(Items.Placed<Chassis> chassis, Mod before, int index, Problems problems) {
        Mod mod = chassis.value().mods().get(index);
        if (Prerequisites.exclude(chassis.value(), before.id(), mod.id())) {
            return;
        }
        Set<String> shared = mounts(before);
        shared.retainAll(mounts(mod));
        for (String mount : shared) {
            problems.add(chassis.item()
                    .problem(
                            "mods[" + index + "].rules.excludes",
                            "a raised cover on \"" + mount + "\" that can go with that of \"" + before.id() + "\"",
                            "raised covers on one mount that exclude each other",
                            "Add " + before.id() + " to excludes."));
        }
    }

    private static Set<String> mounts(Mod mod) {
        Set<String> out = new TreeSet<>();
        mod.effect().covers().forEach(c -> out.add(c.mount()));
        return out;
    }
}

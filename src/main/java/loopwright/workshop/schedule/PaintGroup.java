package loopwright.workshop.schedule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Parts that are painted together, because one mod or several do something to the same panels.
 *
 * @param mods those that want the paint
 * @param parts all panels and pieces of theirs
 */
record PaintGroup(List<ModWork> mods, Set<String> parts) {

    /** The groups of some mods, none sharing a part; those decided late by themselves. */
    static List<PaintGroup> of(List<ModWork> all) {
        List<PaintGroup> out = new ArrayList<>();
        for (ModWork mod : all) {
            if (!mod.paints()) {
                continue;
            }
            List<ModWork> mods = new ArrayList<>();
            Set<String> parts = new TreeSet<>(mod.parts());
            List<PaintGroup> apart = new ArrayList<>();
            for (PaintGroup group : out) {
                if (Collections.disjoint(group.parts, mod.parts())) {
                    apart.add(group);
                } else {
                    mods.addAll(group.mods);
                    parts.addAll(group.parts);
                }
            }
            mods.add(mod);
            apart.add(new PaintGroup(mods, parts));
            out = apart;
        }
        return out;
    }

    String id() {
        return parts.stream().map(p -> p.replaceFirst("^piece:", "")).collect(Collectors.joining("+"));
    }

    String words() {
        return parts.stream().map(ModWork::words).collect(Collectors.joining(", "));
    }

    int paintMin() {
        return mods.stream().mapToInt(m -> m.mod().work().paintMin()).sum();
    }

    int waitDays() {
        return mods.stream().mapToInt(m -> m.mod().work().waitDays()).max().orElse(0);
    }

    boolean late() {
        return mods.stream().allMatch(ModWork::late);
    }

    boolean loose() {
        return mods.stream().allMatch(ModWork::loose);
    }
}

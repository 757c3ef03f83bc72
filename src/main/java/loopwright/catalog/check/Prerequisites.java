package loopwright.catalog.check;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;

/** What mods of a chassis need and what they cannot go with. */
final class Prerequisites {

    /** Most mods of a chassis; beyond it nobody could overlook the sets, and no search end. */
    static final int MODS_MAX = 62;

    private Prerequisites() {}

    /** What a mod names as needed. */
    static List<String> direct(Chassis chassis, String id) {
        return chassis.mods().stream()
                .filter(m -> m.id().equals(id))
                .flatMap(m -> m.rules().requires().stream())
                .toList();
    }

    /** Everything a mod needs, at any remove. */
    static Set<String> all(Chassis chassis, String id) {
        Set<String> out = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(direct(chassis, id));
        while (!open.isEmpty()) {
            String next = open.remove();
            if (out.add(next)) {
                open.addAll(direct(chassis, next));
            }
        }
        return out;
    }

    /** Whether one of two mods names the other as excluded. */
    static boolean exclude(Chassis chassis, String one, String other) {
        return names(chassis, one, other) || names(chassis, other, one);
    }

    private static boolean names(Chassis chassis, String one, String other) {
        for (Mod mod : chassis.mods()) {
            if (mod.id().equals(one) && mod.rules().excludes().contains(other)) {
                return true;
            }
        }
        return false;
    }
}

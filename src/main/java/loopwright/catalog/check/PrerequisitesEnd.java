package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.read.Problems;

/** No mod needs itself, directly or through others; the problem names the whole circle, once. */
final class PrerequisitesEnd implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            Set<String> told = new TreeSet<>();
            List<Mod> mods = chassis.value().mods();
            if (mods.size() > Prerequisites.MODS_MAX) {
                problems.add(chassis.item()
                        .problem(
                                "mods", mods.size() + " mods", "at most " + Prerequisites.MODS_MAX + " a chassis", ""));
                continue;
            }
            for (int i = 0; i < mods.size(); i++) {
                List<String> circle = circle(chassis.value(), mods.get(i).id(), new ArrayList<>(), new TreeSet<>());
                if (!circle.isEmpty() && told.addAll(circle)) {
                    problems.add(chassis.item()
                            .problem(
                                    "mods[" + i + "].rules.requires",
                                    "the circle " + String.join(" → ", circle),
                                    "prerequisites that come to an end",
                                    ""));
                }
            }
        }
    }

    /** The way from a mod back to itself, or nothing. */
    private static List<String> circle(Chassis chassis, String id, List<String> way, Set<String> left) {
        if (!way.isEmpty() && way.get(0).equals(id)) {
            List<String> closed = new ArrayList<>(way);
            closed.add(id);
            return closed;
        }
        if (!left.add(id)) {
            return List.of();
        }
        way.add(id);
        for (String next : Prerequisites.direct(chassis, id)) {
            List<String> found = circle(chassis, next, way, left);
            if (!found.isEmpty()) {
                return found;
            }
        }
        way.remove(way.size() - 1);
        return List.of();
    }
}

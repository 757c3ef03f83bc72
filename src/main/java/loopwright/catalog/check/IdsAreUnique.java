package loopwright.catalog.check;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** No two parts of a catalogue share an id, and no two panels, bodies, places, mounts or mods of a chassis. */
final class IdsAreUnique implements Check {

    @Override
    public void run(Items items, Problems problems) {
        Map<String, Item> first = new TreeMap<>();
        for (Item item : items.all()) {
            if (item.id().isEmpty() || !item.kind().isPart()) {
                continue;
            }
            Item before = first.putIfAbsent(item.id(), item);
            if (before != null) {
                problems.add(item.problem(
                        "id",
                        "\"" + item.id() + "\" a second time",
                        "an id that nothing else in the catalogue has",
                        "It is already that of a " + before.kind().one() + " at "
                                + before.subject().file() + ":"
                                + before.node().placeOf("id").line() + "."));
            }
        }
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            ChassisIds.spaces(chassis.value()).forEach(space -> within(chassis.item(), space, problems));
        }
    }

    private static void within(Item item, List<ChassisIds.Named> space, Problems problems) {
        Set<String> seen = new HashSet<>();
        for (ChassisIds.Named named : space) {
            if (!seen.add(named.id())) {
                problems.add(item.problem(
                        named.path(),
                        "\"" + named.id() + "\" a second time",
                        "an id that nothing else of its kind in this chassis has",
                        ""));
            }
        }
    }
}

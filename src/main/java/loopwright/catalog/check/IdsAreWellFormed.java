package loopwright.catalog.check;

import java.util.List;
import java.util.regex.Pattern;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** Ids are small letters, digits and single hyphens, so that they can stand in keys and file names. */
final class IdsAreWellFormed implements Check {

    private static final Pattern WELL_FORMED = Pattern.compile("(?=.{1,60}$)[a-z0-9]+(-[a-z0-9]+)*");

    @Override
    public void run(Items items, Problems problems) {
        for (Item item : items.all()) {
            if (!item.id().isEmpty()) {
                check(item, "id", item.id(), problems);
            }
        }
        for (Items.Placed<Chassis> chassis : items.of(Chassis.class)) {
            ChassisIds.spaces(chassis.value()).stream()
                    .flatMap(List::stream)
                    .forEach(named -> check(chassis.item(), named.path(), named.id(), problems));
        }
    }

    /** Notes an id that is not well formed. */
    static void check(Item item, String path, String id, Problems problems) {
        if (!WELL_FORMED.matcher(id).matches()) {
            problems.add(
                    item.problem(path, "\"" + id + "\"", "small letters, digits and single hyphens, at most 60", ""));
        }
    }
}

package loopwright.catalog.check;

import java.util.Collection;
import java.util.List;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Nearest;
import loopwright.catalog.read.Problems;

/**
 * Looks up ids that a field names.
 *
 * @param what whose id is allowed, like {@code a mod of this chassis}
 */
record Reference(Item item, Collection<String> known, String what, Problems problems) {

    /** Notes the id if it is not known. */
    void check(String path, String id) {
        if (!known.contains(id)) {
            problems.add(item.problem(path, "\"" + id + "\"", "the id of " + what, Nearest.hint(id, known)));
        }
    }

    /** Notes each id that is not known. */
    void checkAll(String path, List<String> ids) {
        for (int i = 0; i < ids.size(); i++) {
            check(path + "[" + i + "]", ids.get(i));
        }
    }
}

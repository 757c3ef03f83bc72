package loopwright.catalog.check;

import java.util.Set;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** What an item is a variant of is another item of its kind. */
final class VariantsExist implements Check {

    @Override
    public void run(Items items, Problems problems) {
        if (!items.whole()) {
            return;
        }
        for (Item item : items.all()) {
            item.node().findText("variant_of").ifPresent(of -> {
                Set<String> known = items.ids(item.kind());
                known.remove(item.id());
                new Reference(item, known, "another " + item.kind().one(), problems).check("variant_of", of);
            });
        }
    }
}

package loopwright.catalog.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.read.Problems;
import loopwright.catalog.standard.Practice;

/** No two instruments of the practice share an id, and each takes something. */
final class InstrumentsAreNamedOnce implements Check {

    @Override
    public void run(Items items, Problems problems) {
        for (Items.Placed<Practice> practice : items.of(Practice.class)) {
            List<Practice.Instrument> all = practice.value().measuring().instruments();
            Set<String> seen = new HashSet<>();
            for (int i = 0; i < all.size(); i++) {
                String path = "measuring.instruments[" + i + "]";
                if (!seen.add(all.get(i).id())) {
                    problems.add(practice.item()
                            .problem(
                                    path + ".id",
                                    "\"" + all.get(i).id() + "\" a second time",
                                    "an id that no other instrument has",
                                    ""));
                }
                if (all.get(i).takes().isEmpty()) {
                    problems.add(practice.item()
                            .problem(
                                    path + ".takes",
                                    "nothing",
                                    "at least one of outside, inside, depth, position",
                                    ""));
                }
            }
        }
    }
}

package loopwright.catalog.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.brief.Look;
import loopwright.catalog.brief.Look.Colour;
import loopwright.catalog.brief.Look.Match;
import loopwright.catalog.read.Item;
import loopwright.catalog.read.Problems;

/** Colours of a brief have ids of their own, pairs name two of them, and dye is for coolant. */
record LookCheck(Item item, Problems problems) {

    void check(Look look) {
        List<String> ids = look.colours().stream().map(Colour::id).toList();
        Set<String> seen = new HashSet<>();
        boolean dyed = false;
        for (int i = 0; i < ids.size(); i++) {
            String path = "look.colours[" + i + "]";
            if (!seen.add(ids.get(i))) {
                problems.add(item.problem(
                        path + ".id", "\"" + ids.get(i) + "\" a second time", "an id that no other colour has", ""));
            }
            Colour colour = look.colours().get(i);
            if (colour.dropsPerL().isPresent() && (dyed || colour.on() != Look.On.COOLANT)) {
                problems.add(item.problem(
                        path + ".drops_per_L",
                        dyed ? "a second dye" : "dye on something else than coolant",
                        "one dye, on a colour with on: coolant",
                        ""));
            }
            dyed |= colour.dropsPerL().isPresent();
        }
        Reference reference = new Reference(item, ids, "a colour of this brief", problems);
        for (int i = 0; i < look.matches().size(); i++) {
            Match match = look.matches().get(i);
            String path = "look.matches[" + i + "]";
            reference.check(path + ".one", match.one());
            reference.check(path + ".other", match.other());
            if (match.one().equals(match.other())) {
                problems.add(
                        item.problem(path + ".other", "\"" + match.other() + "\" twice", "two different colours", ""));
            }
        }
    }
}

package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.Way;
import loopwright.fit.Layout;

/** Every way to have one layout, for people. */
final class LayoutWays {

    private LayoutWays() {}

    static List<String> lines(UnlockAnswer answer, String key) {
        List<Way> ways = answer.waysTo(key);
        if (ways.isEmpty()) {
            return List.of("No layout with the key " + key
                    + (answer.incompleteBecause().isPresent() ? " found yet." : " fits here: fit lists the keys."));
        }
        Layout layout = ways.get(0).best().layout().layout();
        List<String> out = new ArrayList<>(Lines.wrap(
                key + ":  ", layout.stacks().stream().map(StackWords::full).collect(Collectors.joining(" | "))));
        WayLines words = new WayLines(
                answer.fitCase().chassis(), answer.fitCase().brief().terms());
        String head = "  do  ";
        for (Way way : ways) {
            out.addAll(words.toLayout(head, way));
            head = "  or  ";
        }
        return out;
    }
}

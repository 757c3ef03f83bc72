package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.AsDelivered.Reason;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Unlocked;
import loopwright.answer.Unlocks.Way;

/** One mount, for people: what it takes as delivered, what mods unlock, what stays impossible. */
final class UnlockMount {

    private static final String INDENT = "  ";

    private UnlockMount() {}

    static List<String> lines(UnlockAnswer answer, AtMount at) {
        List<String> out = new ArrayList<>(Lines.wrap(at.frame().mount().id() + ":  ", today(answer, at)));
        WayLines ways = new WayLines(
                answer.fitCase().chassis(), answer.fitCase().brief().terms());
        int width = at.unlocked().stream()
                .mapToInt(u -> ClassWords.of(u.stack()).length())
                .max()
                .orElse(0);
        for (Unlocked unlocked : at.unlocked()) {
            String name = ClassWords.of(unlocked.stack());
            String head = INDENT + name + " ".repeat(width - name.length() + 2);
            for (Way way : unlocked.ways()) {
                out.addAll(ways.lines(head, way));
                head = INDENT + "or" + " ".repeat(width);
            }
        }
        out.addAll(ImpossibleLines.lines(answer, at, INDENT));
        return out;
    }

    private static String today(UnlockAnswer answer, AtMount at) {
        if (!answer.wish().with().isEmpty()) {
            return "with " + String.join(", ", answer.wish().with()) + " done in any case";
        }
        if (!at.asDelivered().isEmpty()) {
            return "as delivered " + ClassWords.of(at.asDelivered());
        }
        if (answer.incompleteBecause().isPresent()) {
            return "as delivered nothing found yet";
        }
        Reason why = answer.whyNothing(at.frame());
        return "as delivered nothing ("
                + why.nearest()
                        .filter(n -> why.shortfallHmm() > 0)
                        .map(n -> why.text() + " in the way, " + Mm.text(why.shortfallHmm()) + " mm short for "
                                + ClassWords.of(n))
                        .orElse(why.text())
                + ")";
    }
}

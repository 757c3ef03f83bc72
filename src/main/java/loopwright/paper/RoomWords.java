package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.fit.Growth;
import loopwright.fit.Layout;

/** The room that a layout leaves, as a table for people, as sentences, and as rows for programs. */
final class RoomWords {

    private RoomWords() {}

    /** One line a measure; patterns of which nothing goes on a mount for the same reason share one. */
    static Columns table(List<Growth> growths) {
        Columns out = Columns.headed("room left for", "now, mm", "up to, mm", "more, mm", "stopped by");
        for (int i = 0; i < growths.size(); i++) {
            Growth growth = growths.get(i);
            StringBuilder what = new StringBuilder(what(growth));
            while (i + 1 < growths.size() && areAlike(growth, growths.get(i + 1))) {
                i++;
                what.append(", ").append(growths.get(i).at().orElseThrow().pattern());
            }
            out.row(what.toString(), now(growth), upTo(growth), more(growth), growth.stoppedBy());
        }
        return out;
    }

    private static boolean areAlike(Growth one, Growth next) {
        return one.isNone()
                && next.isNone()
                && one.stoppedBy().equals(next.stoppedBy())
                && one.at().orElseThrow().frame().equals(next.at().orElseThrow().frame());
    }

    private static String now(Growth growth) {
        return growth.nowHmm().map(Mm::text).orElse("-");
    }

    private static String upTo(Growth growth) {
        return growth.mostHmm().map(Mm::text).orElse(growth.isNone() ? "none" : "any");
    }

    private static String more(Growth growth) {
        return growth.nowHmm()
                .flatMap(now -> growth.mostHmm().map(most -> Mm.text(most - now)))
                .orElse("-");
    }

    /** {@code card length: 267 mm, up to 284; stopped by front radiator}. */
    static String sentence(Growth growth) {
        return what(growth) + ": "
                + growth.nowHmm().map(now -> Mm.text(now) + " mm, ").orElse("")
                + growth.mostHmm().map(m -> "up to " + Mm.text(m) + " mm").orElse(growth.isNone() ? "none" : "any")
                + "; stopped by " + growth.stoppedBy();
    }

    private static String what(Growth growth) {
        return switch (growth.measure()) {
            case CARD_LENGTH -> "card length";
            case SUPPLY_LENGTH -> "supply length";
            case MEMORY_HEIGHT -> "memory height";
            case RADIATOR_THICKNESS -> radiator(growth);
        };
    }

    private static String radiator(Growth growth) {
        Growth.At at = growth.at().orElseThrow();
        String where = at.frame().mount().id() + " ";
        if (growth.nowHmm().isPresent()) {
            return where + "radiator thickness";
        }
        return where
                + at.pattern()
                + at.shape()
                        .map(s -> new Layout.Stack(at.frame(), s))
                        .map(s -> ", fans " + StackWords.fans(s) + ", ports " + StackWords.portEnd(s))
                        .orElse("");
    }

    /** One object a measure. */
    static List<Object> rows(List<Growth> growths) {
        List<Object> out = new ArrayList<>();
        for (Growth growth : growths) {
            Map<String, Object> one = Json.object();
            one.put("what", JsonWords.of(growth.measure()));
            growth.at().ifPresent(at -> putPlace(one, at));
            one.put("now_mm", growth.nowHmm().<Object>map(Mm::number).orElse(Json.NOTHING));
            one.put("most_mm", growth.mostHmm().<Object>map(Mm::number).orElse(Json.NOTHING));
            one.put("stopped_by", growth.stoppedBy());
            out.add(one);
        }
        return out;
    }

    private static void putPlace(Map<String, Object> one, Growth.At at) {
        one.put("mount", at.frame().mount().id());
        one.put("pattern", at.pattern().toString());
        at.shape().ifPresent(shape -> {
            Layout.Stack stack = new Layout.Stack(at.frame(), shape);
            one.put("fans", StackWords.fans(stack));
            one.put("arrangement", shape.arrangement().word());
            one.put("port_end", StackWords.portEnd(stack));
        });
    }
}

package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.AtMount;
import loopwright.answer.Unlocks.Impossible;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.Shortfalls.Shortfall;

/** What no mod unlocks on a mount, for people: what is lacking, or why it cannot hang. */
final class ImpossibleLines {

    private ImpossibleLines() {}

    static List<String> lines(UnlockAnswer answer, AtMount at, String indent) {
        Chassis chassis = answer.fitCase().chassis();
        SortedMap<String, List<RadiatorClass>> cannotHang = new TreeMap<>();
        Columns lacking = Columns.plain();
        for (Impossible each : at.impossible()) {
            Shortfall lacks = each.shortfall();
            String name = ClassWords.of(each.stack());
            switch (answer.state(at.frame(), each)) {
                case UNKNOWN ->
                    lacking.row(
                            name,
                            "not known: measure " + String.join(", ", answer.toMeasure(at.frame(), each.stack())));
                case NOT_REACHED -> lacking.row(name, "not known: the search was stopped before it");
                case IMPOSSIBLE -> {
                    if (lacks.shortfallHmm().isPresent()) {
                        lacking.row(name, "NO: " + text(lacks, chassis));
                    } else {
                        cannotHang
                                .computeIfAbsent(lacks.blockedBy(), b -> new ArrayList<>())
                                .add(each.stack());
                    }
                }
            }
        }
        List<String> out = new ArrayList<>(lacking.lines(indent));
        for (Map.Entry<String, List<RadiatorClass>> each : cannotHang.entrySet()) {
            out.addAll(Lines.wrap(
                    indent, indent + "  ", ClassWords.of(each.getValue()) + "  NO, even with mods: " + each.getKey()));
        }
        return out;
    }

    /** {@code 8.5 mm short at the card}, and with which mods it comes that near. */
    private static String text(Shortfall lacks, Chassis chassis) {
        String with = lacks.mods().size() == 0 ? "" : ", even with " + ModWords.ids(lacks.mods(), chassis);
        return Mm.text(lacks.shortfallHmm().orElse(0)) + " mm short at the " + lacks.blockedBy() + "" + with;
    }
}

package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.Inspection.Hot;
import loopwright.loop.Steady;

/** Temperatures of a build and what they hang on. */
final class InspectHeatLines {

    /** Uncertain inputs shown: the largest. */
    private static final int DOUBTS = 5;

    private InspectHeatLines() {}

    static List<String> temperatures(InspectAnswer answer) {
        Inspection in = answer.inspection();
        Steady state = in.state();
        List<String> out = new ArrayList<>();
        Columns table = Columns.headed("", "C", "+-", "how");
        table.row(
                "coolant",
                one(state.water().meanC()),
                one(in.coolantBand().halfK()),
                "mean; " + one(state.water().coldestC()) + " to "
                        + one(state.water().warmestC()) + " round the loop");
        for (Hot hot : in.junctions()) {
            table.row(
                    hot.name().replace(" block", ""),
                    one(hot.temperatureC()),
                    one(hot.plusMinusK()),
                    one(hot.stepK()) + " K over the coolant at its block");
        }
        table.row("air inside", one(state.caseC()), one(in.caseBand().halfK()), "well mixed");
        out.addAll(table.lines(""));
        out.add("");
        Columns rooms = Columns.headed("room C", "coolant C", "air inside C");
        answer.rooms().forEach(r -> rooms.row(one(r.roomC()), one(r.coolantC()), one(r.caseC())));
        out.addAll(rooms.lines(""));
        return out;
    }

    static List<String> causes(InspectAnswer answer) {
        Inspection in = answer.inspection();
        List<String> out = new ArrayList<>();
        StringBuilder doubts = new StringBuilder();
        for (Map.Entry<String, Double> doubt :
                in.doubts().stream().limit(DOUBTS).toList()) {
            doubts.append(doubts.isEmpty() ? "" : ", ")
                    .append(doubt.getKey())
                    .append(" ")
                    .append(Mm.rounded(Math.abs(doubt.getValue()), 2))
                    .append(" K");
        }
        out.addAll(Lines.wrap("least sure: ", doubts + " (one standard deviation each)"));
        return out;
    }

    static List<String> warmUp(InspectAnswer answer) {
        return List.of();
    }

    private static String one(double value) {
        return Mm.rounded(value, 1).toPlainString();
    }
}

package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.Inspection.Hot;
import loopwright.loop.Machine;
import loopwright.loop.Steady;
import loopwright.loop.study.Course;
import loopwright.loop.study.Effect;
import loopwright.loop.study.StandingBlock;
import loopwright.loop.study.WarmUp;

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
        answer.rooms()
                .forEach(r -> rooms.row(
                        one(r.roomC()),
                        one(r.coolantC()) + " +-" + one(r.coolantK()),
                        one(r.caseC()) + " +-" + one(r.caseK())));
        out.addAll(rooms.lines(""));
        return out;
    }

    static List<String> causes(InspectAnswer answer) {
        Inspection in = answer.inspection();
        List<String> out = new ArrayList<>();
        Columns table = Columns.headed("K", "for", "what");
        answer.sensitivities().stream()
                .sorted(java.util.Comparator.comparingDouble((Effect e) -> -Math.abs(e.kelvin())))
                .forEach(e -> table.row(Mm.rounded(e.kelvin(), 2).toPlainString(), e.step(), e.what()));
        out.addAll(table.lines(""));
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
        Optional<WarmUp> found = answer.warmUp();
        if (found.isEmpty()) {
            return List.of("No steady state, so no warm-up either.");
        }
        WarmUp warmUp = found.get();
        double limitC = answer.inspection().fitCase().brief().limits().coolantMaxC();
        Columns table =
                Columns.headed("", "after 10 min C", "in the end C", "time constant s", "passes " + one(limitC) + " C");
        row(table, "switched on", warmUp.fromRoom(), limitC);
        for (Machine.FanMount mount : answer.inspection().machine().mounts()) {
            row(table, mount.mount() + " fans stop", warmUp.afterFansStop(Set.of(mount.mount())), limitC);
        }
        row(table, "all fans stop", warmUp.afterAllFansStop(), limitC);
        List<String> out = new ArrayList<>(table.lines(""));
        for (StandingBlock block :
                warmUp.afterPumpStops(answer.inspection().fitCase().catalog().practice())) {
            OptionalDouble seconds = block.secondsUntil(JUNCTION_LIMIT_C);
            out.add("pump stops: " + block.name() + " warms " + Mm.rounded(block.riseKPerS(), 2) + " K/s, "
                    + JUNCTION_LIMIT_C + " C after "
                    + (seconds.isPresent()
                            ? Mm.rounded(seconds.getAsDouble(), 0).toPlainString()
                            : "-")
                    + " s at full load (good to a factor of two)");
        }
        return out;
    }

    /** Where parts slow down to save themselves, °C: shown as a yardstick; common practice, no source. */
    private static final int JUNCTION_LIMIT_C = 95;

    private static void row(Columns table, String what, Course course, double limitC) {
        OptionalDouble passes = course.secondsUntil(limitC);
        table.row(
                what,
                one(course.afterTenMinutesC()),
                course.endC().isPresent() ? one(course.endC().getAsDouble()) : "none",
                course.timeConstantS().isPresent()
                        ? Mm.rounded(course.timeConstantS().getAsDouble(), 0).toPlainString()
                        : "-",
                passes.isPresent() ? "after " + Mm.rounded(passes.getAsDouble(), 0) + " s" : "never");
    }

    private static String one(double value) {
        return Mm.rounded(value, 1).toPlainString();
    }
}

package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.InspectAnswer;
import loopwright.answer.PlumbingPlan;
import loopwright.loop.Steady;
import loopwright.plumbing.FittingBill;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.Port;
import loopwright.plumbing.route.Route;
import loopwright.plumbing.route.Where;
import loopwright.plumbing.rule.Finding;
import loopwright.quantity.Hundredths;
import loopwright.quantity.Units;

/** The plumbing of a build, for programs. */
final class PlumbingJson {

    private PlumbingJson() {}

    static Map<String, Object> of(InspectAnswer answer) {
        PlumbingPlan plumbing = answer.plumbing();
        LoopPlan plan = plumbing.plan();
        Map<String, Object> out = Json.object();
        out.put("order", plan.parts().stream().map(LoopPart::name).toList());
        out.put("runs", plan.runs().stream().map(PlumbingJson::run).toList());
        out.put("tube_mm", Hundredths.toMm((int) plan.tubeHmm()));
        out.put("fittings", fittings(plan.materials().bill()));
        out.put("fittings_cents", plan.materials().bill().cents());
        out.put("fittings_missing", plan.materials().bill().missing());
        out.put("loop_mL", Mm.rounded(plan.materials().coolant().fullML(), 1));
        out.put("tube_mL", Mm.rounded(plan.materials().coolant().tubeML(), 1));
        out.put("order_mL", Mm.rounded(plan.materials().coolant().orderML(), 0));
        out.put("fill", port(plan.openings().fill()));
        out.put(
                "free_ports",
                plan.openings().free().stream().map(PlumbingJson::port).toList());
        out.put("drain", plan.openings().drain().<Object>map(PlumbingJson::port).orElse(Json.NOTHING));
        out.put("as_ranked", state(plumbing.reckoned()));
        out.put(
                "as_planned",
                plumbing.planned().<Object>map(PlumbingJson::state).orElse(Json.NOTHING));
        out.put("findings", plan.findings().stream().map(PlumbingJson::finding).toList());
        out.put("notes", plan.notes());
        return out;
    }

    private static Map<String, Object> run(PlannedRun run) {
        Map<String, Object> one = Json.object();
        one.put("from", port(run.from()));
        one.put("to", port(run.to()));
        one.put("length_mm", Hundredths.toMm(run.lengthHmm()));
        one.put("bends", run.bends());
        one.put("elbows_90", run.elbows());
        one.put("elbows_45", 0);
        one.put("straight_fittings", 2);
        one.put("reachable", run.route().isPresent());
        one.put("blocked_by", run.blockedBy());
        List<Where> points = run.route().map(Route::points).orElse(List.of());
        one.put("points_mm", points.stream().map(PlumbingJson::point).toList());
        return one;
    }

    private static Map<String, Object> port(Port port) {
        Map<String, Object> one = Json.object();
        one.put("part", port.part());
        one.put("port", port.id());
        one.put("at_mm", point(port.at()));
        one.put("looks", JsonWords.of(port.out()));
        one.put("way", JsonWords.of(port.way()));
        one.put("assumed", port.assumed());
        return one;
    }

    private static List<Object> point(Where at) {
        return List.of(Hundredths.toMm(at.x()), Hundredths.toMm(at.y()), Hundredths.toMm(at.z()));
    }

    private static List<Map<String, Object>> fittings(FittingBill bill) {
        List<Map<String, Object>> out = new ArrayList<>();
        for (FittingBill.Line line : bill.lines()) {
            Map<String, Object> one = Json.object();
            one.put("fitting", line.fitting().id());
            one.put("count", line.count());
            one.put("cents", line.cents());
            out.add(one);
        }
        return out;
    }

    private static Map<String, Object> state(Steady state) {
        Map<String, Object> one = Json.object();
        one.put("flow_L_per_min", Mm.rounded(Units.lPerMin(state.water().flowM3PerS()), 3));
        one.put("coolant_C", Mm.rounded(state.water().meanC(), 2));
        return one;
    }

    private static Map<String, Object> finding(Finding finding) {
        Map<String, Object> one = Json.object();
        one.put("rule", finding.rule());
        one.put("verdict", JsonWords.of(finding.verdict()));
        one.put("sentence", finding.sentence());
        return one;
    }
}

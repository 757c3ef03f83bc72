package loopwright.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.answer.InspectAnswer;
import loopwright.answer.Inspection;
import loopwright.answer.PlumbingPlan;
import loopwright.catalog.brief.Brief;
import loopwright.catalog.part.Part;
import loopwright.fit.rules.Role;
import loopwright.loop.Steady;
import loopwright.plumbing.FittingBill;
import loopwright.plumbing.LoopPart;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.Port;
import loopwright.plumbing.rule.Finding;
import loopwright.plumbing.rule.Finding.Section;
import loopwright.quantity.Hundredths;
import loopwright.quantity.Units;
import loopwright.rank.LoopFittings;

/** The runs of a build, and how it is filled, bled and drained. */
final class InspectPlumbingLines {

    private static final double ML_PER_L = 1000;

    private InspectPlumbingLines() {}

    /** Sections by title. */
    static Map<String, Passages> of(InspectAnswer answer) {
        PlumbingPlan plumbing = answer.plumbing();
        Brief brief = answer.inspection().fitCase().brief();
        Map<String, Passages> out = new LinkedHashMap<>();
        out.put("RUNS, from the tank on", runs(plumbing, answer.inspection()));
        out.put("FILL", fill(plumbing.plan(), brief).then(findings(plumbing.plan(), Section.FILL)));
        out.put("BLEED", findings(plumbing.plan(), Section.BLEED));
        out.put("DRAIN", findings(plumbing.plan(), Section.DRAIN));
        return out;
    }

    private static Passages runs(PlumbingPlan plumbing, Inspection in) {
        Brief brief = in.fitCase().brief();
        LoopPlan plan = plumbing.plan();
        Columns table = Columns.headed("from", "to", "mm", "bends", "elbows", "straight", "verdict");
        for (PlannedRun run : plan.runs()) {
            table.row(
                    run.from().name(),
                    run.to().name(),
                    Mm.text(run.lengthHmm()),
                    Integer.toString(run.bends()),
                    Integer.toString(run.elbows()),
                    "2",
                    verdict(run));
        }
        Passages out = new Passages()
                .table(table)
                .say("", sum(plan, brief))
                .say("", fittings(plan.materials().bill(), in))
                .say("", flow(plumbing));
        plan.notes().forEach(n -> out.say("", n));
        return out.then(findings(plan, Section.RUNS));
    }

    static String verdict(PlannedRun run) {
        if (run.route().isEmpty()) {
            return "BLOCKED by " + String.join(" and ", run.blockedBy());
        }
        return run.isHard() ? "reachable, HARD to lay" : "reachable";
    }

    private static String sum(LoopPlan plan, Brief brief) {
        return "Tube: " + Mm.rounded(plan.tubeHmm() / (double) Hundredths.PER_MM / ML_PER_L, 2)
                + " m of " + plan.materials().tube().id() + ", the brief says "
                + Mm.rounded(brief.loop().tubeM(), 2)
                + " m. An estimate: right-angled along its axis, rounded up run by run; tube laid by hand cuts corners. No"
                + " 45 degree fittings are planned.";
    }

    private static String fittings(FittingBill bill, Inspection in) {
        Brief brief = in.fitCase().brief();
        boolean tank = in.build().chosen().find(Role.RESERVOIR, Part.class).isPresent();
        long reckoned = LoopFittings.of(in.fitCase())
                .totalCents(
                        in.machine().water().blocks().size(),
                        in.state().radiators().size(),
                        tank);
        List<String> parts = new ArrayList<>();
        bill.lines().forEach(l -> parts.add(l.count() + " " + l.fitting().id()));
        bill.missing().forEach(m -> parts.add("no " + m + " in the catalogue"));
        return "Fittings: " + String.join(", ", parts) + ": " + RankWords.money(bill.cents(), brief)
                + "; the build's price reckons with " + RankWords.money(reckoned, brief) + ".";
    }

    private static String flow(PlumbingPlan plumbing) {
        return "Flow: " + state(plumbing.reckoned()) + " as ranked; "
                + plumbing.planned().map(InspectPlumbingLines::state).orElse("no steady state")
                + " with these runs.";
    }

    private static String state(Steady state) {
        return Mm.rounded(Units.lPerMin(state.water().flowM3PerS()), 2) + " L/min, coolant "
                + Mm.rounded(state.water().meanC(), 2) + " C";
    }

    private static Passages fill(LoopPlan plan, Brief brief) {
        double full = plan.materials().coolant().fullML();
        double order = plan.materials().coolant().orderML() / ML_PER_L;
        double wished = brief.loop().coolantL();
        List<String> holds = new ArrayList<>();
        for (LoopPart part : plan.parts()) {
            holds.add(part.name() + " " + Mm.rounded(part.holds().coolantML(), 0));
        }
        holds.add("tube " + Mm.rounded(plan.materials().coolant().tubeML(), 0));
        Passages out = new Passages()
                .say(
                        "",
                        "The loop holds " + Mm.rounded(full, 0) + " mL full: " + String.join(", ", holds) + ". Order "
                                + Mm.rounded(order, 2) + " L, with what flushes new radiators; the brief says "
                                + Mm.rounded(wished, 2) + " L" + (wished < order ? ", TOO LITTLE." : "."));
        Port cap = plan.openings().fill();
        return out.say(
                "",
                "Fill at the " + plan.tank().name() + ", "
                        + (cap.assumed() ? "cap assumed in the middle of its top" : cap.id()) + ", at " + at(cap)
                        + ".");
    }

    /** Chassis coordinates, mm. */
    static String at(Port port) {
        return "x " + Mm.text(port.at().x()) + " y " + Mm.text(port.at().y()) + " z "
                + Mm.text(port.at().z());
    }

    private static Passages findings(LoopPlan plan, Section section) {
        Passages out = new Passages();
        for (Finding finding : plan.findings()) {
            if (finding.section() == section) {
                String word = finding.verdict() == Finding.Verdict.OK
                        ? "ok"
                        : finding.verdict().name();
                out.judge(word, finding.sentence());
            }
        }
        return out;
    }
}

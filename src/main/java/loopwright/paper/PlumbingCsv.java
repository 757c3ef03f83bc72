package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import loopwright.answer.InspectAnswer;
import loopwright.plumbing.LoopPlan;
import loopwright.plumbing.PlannedRun;
import loopwright.plumbing.rule.Finding;

/** The plumbing in sentences, for spreadsheets. */
final class PlumbingCsv {

    private PlumbingCsv() {}

    /** Kind and sentence: a run each, then a rule each. */
    static List<Map.Entry<String, String>> sentences(InspectAnswer answer) {
        LoopPlan plan = answer.plumbing().plan();
        List<Map.Entry<String, String>> out = new ArrayList<>();
        for (PlannedRun run : plan.runs()) {
            out.add(Map.entry(
                    "run",
                    run.from().name() + " to " + run.to().name() + ": " + Mm.text(run.lengthHmm()) + " mm, "
                            + run.bends() + " bends, " + run.elbows() + " elbows, "
                            + InspectPlumbingLines.verdict(run)));
        }
        for (Finding finding : plan.findings()) {
            out.add(Map.entry(finding.rule(), JsonWords.of(finding.verdict()) + ": " + finding.sentence()));
        }
        return out;
    }
}

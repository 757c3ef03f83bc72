package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import loopwright.answer.CutTable;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.fit.MountFrame;

/** The table of cuts for spreadsheets: one row a number of cuts, kind of cut and mount. */
final class CutCsv {

    static final List<String> HEADS =
            List.of("chassis", "cuts_at_most", "cuts", "mount", "largest", "list", "brief", "catalog", "program");

    private CutCsv() {}

    static List<List<String>> rows(UnlockAnswer answer, Origin origin, int cuts) {
        List<List<String>> out = new ArrayList<>();
        for (CutTable.Row row : answer.cutRows(cuts)) {
            for (MountFrame frame : answer.frames()) {
                out.add(row(answer, origin, row.cutsAtMost(), "any", frame, row.all()));
                out.add(row(answer, origin, row.cutsAtMost(), "hidden only", frame, row.hiddenOnly()));
            }
        }
        return out;
    }

    private static List<String> row(
            UnlockAnswer answer,
            Origin origin,
            int cuts,
            String kind,
            MountFrame frame,
            List<List<RadiatorClass>> classes) {
        List<RadiatorClass> here = classes.get(frame.index());
        return List.of(
                answer.fitCase().chassis().id(),
                Integer.toString(cuts),
                kind,
                frame.mount().id(),
                String.join(" ", here.stream().map(ClassWords::of).toList()),
                list(answer),
                origin.brief(),
                origin.catalog(),
                origin.program());
    }

    /** Whether anything may be missing. */
    static String list(UnlockAnswer answer) {
        return answer.incompleteBecause().isEmpty() ? "complete" : "incomplete";
    }
}

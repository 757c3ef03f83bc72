package loopwright.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import loopwright.answer.CutTable;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.fit.MountFrame;

/** What fits with so many cuts, for people: any cuts, and cuts that do not show. */
final class CutLines {

    private CutLines() {}

    static List<String> lines(UnlockAnswer answer, int cuts) {
        List<CutTable.Row> rows = answer.cutRows(cuts);
        List<String> out = new ArrayList<>();
        answer.incompleteBecause()
                .ifPresent(
                        b -> out.add("INCOMPLETE (" + b + "): only what was found so far; nothing below is proven."));
        out.add("Any cuts: the largest radiators, each alone on its mount.");
        out.addAll(block(answer, rows, CutTable.Row::all));
        out.add("");
        out.add("Only cuts that do not show:");
        out.addAll(block(answer, rows, CutTable.Row::hiddenOnly));
        return out;
    }

    private static List<String> block(
            UnlockAnswer answer, List<CutTable.Row> rows, Function<CutTable.Row, List<List<RadiatorClass>>> classes) {
        Columns table = Columns.headed("mount", "cuts at most", "largest radiators");
        for (MountFrame frame : answer.frames()) {
            String mount = frame.mount().id();
            int from = 0;
            while (from < rows.size()) {
                List<RadiatorClass> here = classes.apply(rows.get(from)).get(frame.index());
                int to = from;
                while (to + 1 < rows.size()
                        && classes.apply(rows.get(to + 1)).get(frame.index()).equals(here)) {
                    to++;
                }
                table.row(mount, from == to ? "" + from : from + "-" + to, ClassWords.of(here));
                mount = "";
                from = to + 1;
            }
        }
        return table.lines("  ");
    }
}

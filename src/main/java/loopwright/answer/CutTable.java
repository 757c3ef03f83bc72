package loopwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import loopwright.answer.Unlocks.RadiatorClass;
import loopwright.fit.FitCase;
import loopwright.fit.FitResult;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout.Stack;
import loopwright.fit.ModSet;
import loopwright.fit.MountFrame;
import loopwright.rank.ModBill;

/** What a chassis can hold with at most so many cuts: the largest radiator classes, mount by mount. */
public final class CutTable {

    private CutTable() {}

    /**
     * One line of the table.
     *
     * @param all on each mount, in the chassis's order: the classes that no other of that mount covers
     * @param hiddenOnly the same, with cuts that do not show only
     */
    public record Row(int cutsAtMost, List<List<RadiatorClass>> all, List<List<RadiatorClass>> hiddenOnly) {}

    /** Rows for 0 to {@code cuts} cuts: any cuts, and none that shows. */
    public static List<Row> rows(FitCase fitCase, FitResult fits, int cuts) {
        List<Row> out = new ArrayList<>();
        for (int n = 0; n <= cuts; n++) {
            List<List<RadiatorClass>> all = new ArrayList<>();
            List<List<RadiatorClass>> hidden = new ArrayList<>();
            for (MountFrame frame : fitCase.frames()) {
                all.add(classes(fitCase, fits, frame, n, Integer.MAX_VALUE));
                hidden.add(classes(fitCase, fits, frame, n, 0));
            }
            out.add(new Row(n, List.copyOf(all), List.copyOf(hidden)));
        }
        return List.copyOf(out);
    }

    private static List<RadiatorClass> classes(
            FitCase fitCase, FitResult fits, MountFrame frame, int cuts, int visibleCuts) {
        SortedSet<RadiatorClass> found = new TreeSet<>();
        for (FoundLayout layout : fits.fits()) {
            Stack first = layout.layout().stacks().get(0);
            if (layout.layout().stacks().size() == 1 && first.frame().index() == frame.index()) {
                for (ModSet mods : layout.needed()) {
                    ModBill bill = ModBill.of(fitCase.catalog(), fitCase.chassis(), mods);
                    if (bill.cuts() <= cuts && bill.visibleCuts() <= visibleCuts) {
                        found.add(RadiatorClass.of(first));
                    }
                }
            }
        }
        return found.stream()
                .filter(c -> found.stream().noneMatch(o -> !o.equals(c) && o.covers(c)))
                .toList();
    }
}

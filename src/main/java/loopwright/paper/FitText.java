package loopwright.paper;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import loopwright.answer.FitAnswer;
import loopwright.answer.FitList;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.Witness;

/** What fits, for people: one block a chassis, in it one block a group of layouts. */
public final class FitText implements FitPaper {

    /** Other layouts of a group that are named. */
    private static final int NAMED_MAX = 3;

    /** Square millimetres in a square centimetre. */
    private static final int MM2_PER_CM2 = 100;

    /** The temperature difference at which the trade quotes radiators, K; common practice. */
    private static final int QUOTED_K = 10;

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;
    private final int top;

    /**
     * Writes the groups.
     *
     * @param top most groups shown
     */
    public FitText(PrintWriter out, Origin origin, Ink ink, int top) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
        this.top = top;
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(FitAnswer answer) {
        List<FoundLayout> fits = answer.fits();
        List<FitList.Group> groups = FitList.groups(fits);
        FitHead.lines(answer, fits, groups.size()).forEach(this::print);
        for (int i = 0; i < Math.min(top, groups.size()); i++) {
            print("");
            group(answer, Letters.of(i), groups.get(i)).forEach(this::print);
        }
        if (groups.size() > top) {
            print("");
            print((groups.size() - top) + " more groups are not shown: --top " + groups.size()
                    + " shows all, --all lists every layout.");
        }
        UnknownText.lines(answer.unknown()).forEach(this::print);
        print("");
        return !fits.isEmpty();
    }

    private List<String> group(FitAnswer answer, String letter, FitList.Group group) {
        FitList.Entry first = group.entries().get(0);
        Layout layout = first.found().layout();
        ModSet mods = first.mods();
        Chassis chassis = answer.fitCase().chassis();
        Witness witness = answer.witness(layout, mods);
        String indent = "   ";
        List<String> out = new ArrayList<>();
        Columns stacks = Columns.plain();
        for (Witness.At at : witness.stacks()) {
            stacks.row(
                    at.stack().frame().mount().id(),
                    StackWords.size(at.stack()),
                    "fans " + StackWords.fans(at.stack()),
                    "ports " + StackWords.portEnd(at.stack()),
                    StackWords.sits(at));
        }
        out.addAll(stacks.lines(indent));
        out.set(
                0,
                letter
                        + " ".repeat(Math.max(1, indent.length() - letter.length()))
                        + out.get(0).strip());
        out.addAll(Lines.wrap(indent + "do:       ", ModWords.titles(mods, chassis) + otherSets(first)));
        out.addAll(Lines.wrap(indent + "tightest: ", GapWords.tightest(witness)));
        out.addAll(Lines.wrap(
                indent + "fits:     ",
                ChanceWords.fits(witness, answer.fitCase().brief())));
        out.addAll(Lines.wrap(
                indent + "gives:    ",
                FitList.area(layout) / MM2_PER_CM2 + " cm2 of fans, "
                        + Mm.rounded(QUOTED_K * answer.conductanceWPerK(layout, mods), 0) + " W at 10 K; "
                        + ModWords.cuts(mods, chassis)));
        out.addAll(Lines.wrap(indent + "key:      ", layout.key() + more(group)));
        return out;
    }

    private static String otherSets(FitList.Entry entry) {
        int others = entry.found().needed().size() - 1;
        return others == 0 ? "" : " (or " + others + (others == 1 ? " other set of mods)" : " other sets of mods)");
    }

    private static String more(FitList.Group group) {
        int others = group.counted() - 1;
        if (others == 0) {
            return "";
        }
        List<String> named = group.entries().stream()
                .skip(1)
                .limit(NAMED_MAX)
                .map(e -> e.found().layout().key())
                .toList();
        return " and " + others + (others == 1 ? " more way" : " more ways")
                + (named.isEmpty() ? "" : ": " + String.join(", ", named) + (others > named.size() ? ", ..." : ""));
    }

    @Override
    public void end() {
        Notes.underFit(origin).forEach(this::print);
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}

package loopwright.paper;

import java.io.PrintWriter;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.answer.FitAnswer;
import loopwright.answer.FitList;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.FoundLayout;
import loopwright.fit.Gap;
import loopwright.fit.Growth;
import loopwright.fit.Layout;
import loopwright.fit.ModSet;
import loopwright.fit.Witness;

/** One layout in full: every mod set it needs, and for each where everything goes and every gap that is not wide. */
public final class FitFull implements FitPaper {

    /** Gaps from here on are not listed, hundredths of a millimetre. */
    private static final int WIDE_HMM = 1000;

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;
    private final String key;

    /** Writes one layout on a writer, which stays open. */
    public FitFull(PrintWriter out, Origin origin, Ink ink, String key) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
        this.key = key;
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(FitAnswer answer) {
        Chassis chassis = answer.fitCase().chassis();
        Optional<FoundLayout> found =
                answer.fits().stream().filter(f -> f.layout().key().equals(key)).findFirst();
        String about = found.map(f -> "layout " + key)
                .orElseGet(() -> "no layout " + key
                        + (answer.incompleteBecause().isEmpty()
                                ? " fits"
                                : " among the " + answer.fitsInAll() + " found so far"));
        Lines.wrap("FIT  ", chassis.title() + " (" + chassis.id() + "). " + FitHead.state(answer) + ": " + about + ".")
                .forEach(this::print);
        Map<List<Growth>, String> told = new HashMap<>();
        found.ifPresent(f -> f.needed().forEach(mods -> way(answer, f.layout(), mods, told)));
        answer.unknown().stream()
                .filter(u -> u.layout().key().equals(key))
                .forEach(u -> Lines.wrap(
                                "   ", "It is unknown until this is measured: " + String.join(", ", u.measure()))
                        .forEach(this::print));
        print("");
        return found.isPresent();
    }

    private void way(FitAnswer answer, Layout layout, ModSet mods, Map<List<Growth>, String> told) {
        Chassis chassis = answer.fitCase().chassis();
        Witness witness = answer.witness(layout, mods);
        print("");
        Lines.wrap(
                        "do: ",
                        ModWords.titles(mods, chassis) + " (" + ModWords.ids(mods, chassis) + "); "
                                + ModWords.cuts(mods, chassis))
                .forEach(this::print);
        print("");
        Columns stacks = Columns.headed("mount", "radiator", "fans, mm", "ports", "best, mm", "centre may sit at, mm");
        witness.stacks()
                .forEach(at -> stacks.row(
                        at.stack().frame().mount().id(),
                        StackWords.size(at.stack()),
                        StackWords.fans(at.stack()),
                        StackWords.portEnd(at.stack()),
                        StackWords.best(at),
                        StackWords.sits(at)));
        stacks.lines("   ").forEach(this::print);
        print("");
        Columns places = Columns.headed("what", "smallest part that will do", "place");
        witness.places().forEach(p -> places.row(p.what(), p.partId(), p.place()));
        places.lines("   ").forEach(this::print);
        print("");
        gaps(witness.gaps()).lines("   ").forEach(this::print);
        Lines.wrap("   fits: ", ChanceWords.fits(witness, answer.fitCase().brief()))
                .forEach(this::print);
        print("");
        room(answer.roomLeft(witness), ModWords.ids(mods, chassis), told).forEach(this::print);
        print("");
        print("   gives " + FitList.area(layout) / 100 + " cm2 of fans, "
                + Mm.rounded(10 * answer.conductanceWPerK(layout, mods), 0) + " W at 10 K");
    }

    /** The room left, unless it is the same as with an earlier set of mods. */
    private static List<String> room(List<Growth> growths, String mods, Map<List<Growth>, String> told) {
        String first = told.computeIfAbsent(growths, g -> mods);
        return first.equals(mods)
                ? RoomWords.table(growths).lines("   ")
                : Lines.wrap("   ", "room left as with " + first);
    }

    /** Every gap that is not wide. */
    static Columns gaps(List<Gap> gaps) {
        Columns out = Columns.headed("gap, mm", "need", "margin, mm", "worst", "rss", "verdict", "chance", "between");
        for (Gap gap : gaps) {
            if (gap.marginHmm() < WIDE_HMM) {
                out.row(
                        Mm.text(gap.clearanceHmm()),
                        Mm.text(gap.needHmm()),
                        Mm.text(gap.marginHmm()),
                        Mm.text(gap.worstCaseHmm()),
                        Mm.text(gap.rssHmm()),
                        GapWords.verdict(gap.verdict()),
                        ChanceWords.word(gap.probability()),
                        gap.one() + " - " + gap.other());
            }
        }
        return out;
    }

    @Override
    public void end() {
        Notes.underFit(origin).forEach(this::print);
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}

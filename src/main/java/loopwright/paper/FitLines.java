package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import loopwright.answer.FitAnswer;
import loopwright.answer.FitList;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.FoundLayout;
import loopwright.fit.Layout;
import loopwright.fit.Witness;

/** Every layout that fits in a line or two: key, tightest place, stacks, and each mod set it needs. */
public final class FitLines implements FitPaper {

    private static final String INDENT = "             ";

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;

    /** Writes on a writer, which stays open. */
    public FitLines(PrintWriter out, Origin origin, Ink ink) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(FitAnswer answer) {
        List<FoundLayout> fits = answer.fits();
        FitHead.lines(answer, fits, FitList.groups(fits).size()).forEach(this::print);
        Chassis chassis = answer.fitCase().chassis();
        int told = 0;
        for (FoundLayout found : fits) {
            if (answer.stopsHere()) {
                print("INCOMPLETE (" + answer.incompleteBecause().orElse("") + "): " + (fits.size() - told)
                        + " layouts that fit are not listed.");
                break;
            }
            Layout layout = found.layout();
            Witness witness = answer.witness(layout, found.needed().get(0));
            Lines.wrap(
                            layout.key() + "  ",
                            INDENT,
                            layout.stacks().stream().map(StackWords::full).collect(Collectors.joining(" | "))
                                    + "; " + needs(found, chassis) + "; "
                                    + GapWords.margin(witness.tightest()) + "; "
                                    + ChanceWords.of(witness.probability())
                                    + ChanceWords.below(
                                            witness.probability(),
                                            answer.fitCase().brief()))
                    .forEach(this::print);
            told++;
        }
        UnknownText.lines(answer.unknown()).forEach(this::print);
        print("");
        return !fits.isEmpty();
    }

    private static String needs(FoundLayout found, Chassis chassis) {
        return found.needed().get(0).size() == 0
                ? "as delivered"
                : "needs "
                        + found.needed().stream()
                                .map(m -> ModWords.ids(m, chassis))
                                .collect(Collectors.joining(" or "));
    }

    @Override
    public void end() {
        Notes.underFit(origin).forEach(this::print);
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}

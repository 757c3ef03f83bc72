package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import loopwright.answer.measure.MeasureAnswer;
import loopwright.answer.measure.Stakes;
import loopwright.answer.measure.Waiting;
import loopwright.answer.measure.Worth;
import loopwright.catalog.standard.Practice.Instrument;
import loopwright.fit.Witness;

/** What to measure first, for people. */
public final class MeasureText implements MeasurePaper {

    private static final String INDENT = "   ";

    /** Dimensions that are offered as lines for a file of readings. */
    private static final int PASTED_MAX = 5;

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;

    /** Writes on a writer, which stays open. */
    public MeasureText(PrintWriter out, Origin origin, Ink ink) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(MeasureAnswer answer) {
        wrap("MEASURE  ", "         ", MeasureWords.first(answer));
        wrap("         ", "         ", head(answer));
        print("");
        waiting(answer.waiting());
        for (int i = 0; i < answer.worths().size(); i++) {
            worth(i + 1, answer.worths().get(i), answer);
        }
        int more = answer.dimensions() - answer.worths().size();
        if (more > 0) {
            print(more + (more == 1 ? " more dimension counts" : " more dimensions count")
                    + " in margins that are not sure: --top " + answer.dimensions() + " shows all.");
            print("");
        }
        answer.witness().ifPresent(w -> layout(w, answer));
        stages(answer);
        paste(answer);
        return answer.isAbout();
    }

    private static String head(MeasureAnswer answer) {
        String state =
                answer.incompleteBecause().map(b -> "INCOMPLETE (" + b + ")").orElse("Complete");
        String about = answer.fitCase().chassis().title() + " ("
                + answer.fitCase().chassis().id() + "). " + state + ": ";
        String wait = answer.unknown().isEmpty() ? "" : ", " + answer.unknown().size() + " wait for a measurement";
        if (answer.view().key().isPresent()) {
            String key = answer.view().key().get();
            return about
                    + (answer.looked().isEmpty()
                            ? answer.unknown().isEmpty() ? "no layout " + key + " fits." : "layout " + key + " waits."
                            : "layout " + key + " fits.");
        }
        int fits = answer.fitsInAll();
        return about + (fits == 0 ? "nothing fits" : fits + (fits == 1 ? " layout fits" : " layouts fit")) + wait + ".";
    }

    private void waiting(List<Waiting> waiting) {
        for (Waiting w : waiting) {
            wrap("?  ", INDENT, w.measurable().text() + ", not known");
            wrap("   where:   ", w.where());
            wrap("   changes: ", MeasureWords.waits(w));
            print("");
        }
    }

    private void worth(int number, Worth w, MeasureAnswer answer) {
        String head = (number + "  ")
                .substring(0, number < 10 ? 3 : String.valueOf(number).length() + 1);
        wrap(head, INDENT, w.measurable().text() + ", " + MeasureWords.believed(w.measurable()));
        wrap("   where:   ", w.spot());
        wrap("   with:    ", MeasureWords.with(w));
        wrap("   changes: ", MeasureWords.hang(w.hang(), answer));
        wrap("   regret:  ", "about " + MeasureWords.money(w.regretCents(), answer) + " avoided");
        print("");
    }

    private void layout(Witness witness, MeasureAnswer answer) {
        wrap(
                "do: ",
                ModWords.titles(witness.mods(), answer.fitCase().chassis()) + " ("
                        + ModWords.ids(witness.mods(), answer.fitCase().chassis()) + ")");
        print("");
        FitFull.gaps(witness.gaps()).lines(INDENT).forEach(this::print);
        wrap("   fits: ", ChanceWords.fits(witness, answer.fitCase().brief()));
        print("");
    }

    private void stages(MeasureAnswer answer) {
        List<Stakes.At> stages = answer.stakes().stages();
        if (stages.isEmpty() || !answer.isAbout()) {
            return;
        }
        String currency = answer.fitCase().brief().terms().currency();
        Optional<Double> clash = answer.witness()
                .filter(w -> w.probability().isPresent())
                .map(w -> 1 - w.probability().orElse(1));
        Columns table = clash.isPresent()
                ? Columns.headed("a clash found", currency, "times its chance, " + currency)
                : Columns.headed("a clash found", currency);
        for (Stakes.At at : stages) {
            String cost = band(1.0 * at.lowCents(), 1.0 * at.highCents());
            String stage = MeasureWords.stage(at.stage());
            clash.ifPresentOrElse(
                    p -> table.row(stage, cost, band(p * at.lowCents(), p * at.highCents())),
                    () -> table.row(stage, cost));
        }
        table.lines(INDENT).forEach(this::print);
        print("");
    }

    private static String band(double lowCents, double highCents) {
        String low = MeasureWords.amount(lowCents);
        String high = MeasureWords.amount(highCents);
        return low.equals(high) ? low : low + "-" + high;
    }

    private void paste(MeasureAnswer answer) {
        if (!answer.isAbout() || (answer.worths().isEmpty() && answer.waiting().isEmpty())) {
            return;
        }
        print("To write down, under items: of a file of readings; leave out the parts that you do not have:");
        answer.waiting().stream()
                .limit(PASTED_MAX)
                .forEach(w -> MeasureWords.pasted(w.measurable(), "").forEach(out::println));
        answer.worths().stream()
                .limit(PASTED_MAX)
                .forEach(w -> MeasureWords.pasted(
                                w.measurable(),
                                w.choice().instrument().map(Instrument::id).orElse(""))
                        .forEach(out::println));
        print("");
    }

    @Override
    public void end() {
        Notes.underMeasure(origin).forEach(this::print);
    }

    private void wrap(String head, String text) {
        Lines.wrap(head, text).forEach(this::print);
    }

    private void wrap(String head, String indent, String text) {
        Lines.wrap(head, indent, text).forEach(this::print);
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}

package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import java.util.OptionalInt;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.AtMount;

/** What mods unlock, for people: one block a chassis, in it one block a mount; or the table of cuts. */
public final class UnlockText implements UnlockPaper {

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;
    private final int top;
    private final OptionalInt cuts;

    /**
     * Writes the blocks.
     *
     * @param top most combinations shown
     * @param cuts show what fits with at most so many cuts instead
     */
    public UnlockText(PrintWriter out, Origin origin, Ink ink, int top, OptionalInt cuts) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
        this.top = top;
        this.cuts = cuts;
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(UnlockAnswer answer) {
        UnlockHead.lines(answer).forEach(this::print);
        print("");
        if (cuts.isPresent()) {
            block(CutLines.lines(answer, cuts.getAsInt()));
        } else {
            for (AtMount at : answer.mounts()) {
                block(UnlockMount.lines(answer, at));
            }
            block(CombinationTable.lines(answer, top));
        }
        return !answer.fits().fits().isEmpty();
    }

    private void block(List<String> lines) {
        if (!lines.isEmpty()) {
            lines.forEach(this::print);
            print("");
        }
    }

    @Override
    public void end() {
        Notes.underUnlock(origin).forEach(this::print);
    }

    private void print(String line) {
        out.println(ink.on(line));
    }
}

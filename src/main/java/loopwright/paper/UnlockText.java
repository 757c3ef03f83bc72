package loopwright.paper;

import java.io.PrintWriter;
import java.util.List;
import loopwright.answer.UnlockAnswer;
import loopwright.answer.Unlocks.AtMount;

/** What mods unlock, for people: one block a chassis, in it one block a mount; or the table of cuts. */
public final class UnlockText implements UnlockPaper {

    private final PrintWriter out;
    private final Origin origin;
    private final Ink ink;
    private final int top;
    private final UnlockView view;

    /**
     * Writes the blocks.
     *
     * @param top most combinations shown
     * @param view show something else instead
     */
    public UnlockText(PrintWriter out, Origin origin, Ink ink, int top, UnlockView view) {
        this.out = out;
        this.origin = origin;
        this.ink = ink;
        this.top = top;
        this.view = view;
    }

    @Override
    public void begin() {
        // The first chassis starts the page.
    }

    @Override
    public boolean add(UnlockAnswer answer) {
        UnlockHead.lines(answer).forEach(this::print);
        print("");
        if (view.layout().isPresent()) {
            block(LayoutWays.lines(answer, view.layout().get()));
            return !answer.waysTo(view.layout().get()).isEmpty();
        }
        if (view.cuts().isPresent()) {
            block(CutLines.lines(answer, view.cuts().getAsInt()));
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

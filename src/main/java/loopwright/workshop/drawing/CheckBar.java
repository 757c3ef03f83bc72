package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;

/** A bar of 100 mm that shows whether the print is true, one each way: printers stretch both ways differently. */
final class CheckBar {

    /** How long it is. */
    static final int LENGTH_HMM = 10_000;

    /** What stands beside it; ±0.3 is common practice. */
    static final String WORDS = "Print at 100 %. 100 mm: measure 100.0 \u00b10.3 both ways or do not use";

    /** From tick to tick. */
    static final int STEP_HMM = 1000;

    private static final int TICK_HMM = 150;

    private CheckBar() {}

    /** A bar to the right. */
    static List<Mark> across(Dot from) {
        List<Mark> out = new ArrayList<>();
        out.add(new Mark.Line(Layer.BAR, from, from.plus(LENGTH_HMM, 0)));
        for (int at = 0; at <= LENGTH_HMM; at += STEP_HMM) {
            int tick = at % LENGTH_HMM == 0 ? 2 * TICK_HMM : TICK_HMM;
            out.add(new Mark.Line(Layer.BAR, from.plus(at, -tick), from.plus(at, tick)));
        }
        out.add(new Mark.Text(Layer.WORDS, from.plus(0, 440), 180, Mark.Stand.STARTS, WORDS));
        return out;
    }

    /** A bar upwards. */
    static List<Mark> up(Dot from) {
        List<Mark> out = new ArrayList<>();
        out.add(new Mark.Line(Layer.BAR, from, from.plus(0, LENGTH_HMM)));
        for (int at = 0; at <= LENGTH_HMM; at += STEP_HMM) {
            int tick = at % LENGTH_HMM == 0 ? 2 * TICK_HMM : TICK_HMM;
            out.add(new Mark.Line(Layer.BAR, from.plus(-tick, at), from.plus(tick, at)));
        }
        out.add(new Mark.Text(Layer.WORDS, from.plus(0, LENGTH_HMM + 200), 180, Mark.Stand.STARTS_UP, "100 mm"));
        return out;
    }
}

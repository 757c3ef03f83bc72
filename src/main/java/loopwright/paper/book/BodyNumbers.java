package loopwright.paper.book;

import java.util.ArrayList;
import java.util.List;
import loopwright.paper.book.ViewFrame.Patch;

/**
 * Numbers of bodies on a view: in the body where there is room, else beside the drawing with a leader line that ends in a dot on
 * it, as item references of ISO 6433 do. No number lies on another.
 */
final class BodyNumbers {

    /** Height of a number, mm. */
    static final double TYPE_MM = 2.6;

    /** Width of a digit of that height, mm. */
    private static final double DIGIT_MM = 1.5;

    /** Room round a number, mm. */
    private static final double AIR_MM = 0.35;

    /** Places that are tried in a body, in each direction. */
    private static final int TRIES = 7;

    /** Half width of the ring round a tight place, with air, mm. */
    private static final double RING_MM = 2;

    private static final String INK = "#1c2024";

    private final Drawing drawing;
    private final double rightMm;
    private final double bottomMm;
    private final List<Patch> taken = new ArrayList<>();

    BodyNumbers(Drawing drawing, double rightMm, double bottomMm) {
        this.drawing = drawing;
        this.rightMm = rightMm;
        this.bottomMm = bottomMm;
    }

    /** Writes a dimension near a place, to the side on which there is paper, and keeps both free of numbers. */
    void dimension(double x, double y, String text) {
        double wide = text.length() * DIGIT_MM;
        boolean right = x + RING_MM + wide < rightMm;
        double from = right ? x + RING_MM : x - RING_MM - wide;
        for (double shift :
                new double[] {-TYPE_MM, TYPE_MM, -2.5 * TYPE_MM, 2.5 * TYPE_MM, -4 * TYPE_MM, 4 * TYPE_MM}) {
            Patch here = new Patch(from, y + shift - TYPE_MM / 2, from + wide, y + shift + TYPE_MM / 2);
            if (taken.stream().noneMatch(here::meets) && here.top() >= 0 && here.bottom() <= bottomMm) {
                taken.add(here);
                taken.add(new Patch(x - RING_MM, y - RING_MM, x + RING_MM, y + RING_MM));
                drawing.text(from, here.bottom() - TYPE_MM * 0.14, TYPE_MM, "start", text);
                return;
            }
        }
    }

    /** Writes a number in a body, or beside the drawing. */
    void write(int number, Patch body) {
        String text = String.valueOf(number);
        for (int k = 0; k < TRIES * TRIES; k++) {
            double x = body.left() + body.width() * share(k % TRIES);
            double y = body.top() + body.height() * share(k / TRIES);
            Patch here = about(x, y, text);
            boolean inside = here.left() >= body.left()
                    && here.right() <= body.right()
                    && here.top() >= body.top()
                    && here.bottom() <= body.bottom();
            if (inside && put(here, x, text)) {
                return;
            }
        }
        beside(text, body);
    }

    /** The middle first, then alternately to both sides. */
    private static double share(int k) {
        int step = (k + 1) / 2;
        return 0.5 + (k % 2 == 0 ? -step : step) / (TRIES + 1.0);
    }

    private static Patch about(double x, double y, String text) {
        double half = text.length() * DIGIT_MM / 2 + AIR_MM;
        return new Patch(x - half, y - TYPE_MM / 2 - AIR_MM, x + half, y + TYPE_MM / 2 + AIR_MM);
    }

    private boolean put(Patch here, double x, String text) {
        if (taken.stream().anyMatch(here::meets)) {
            return false;
        }
        taken.add(here);
        drawing.text(x, here.bottom() - AIR_MM - TYPE_MM * 0.14, TYPE_MM, "middle", text);
        return true;
    }

    private void beside(String text, Patch body) {
        double x = (body.left() + body.right()) / 2;
        double y = (body.top() + body.bottom()) / 2;
        boolean left = x < rightMm / 2;
        double column = left ? ViewFrame.BESIDE_MM / 2 : rightMm - ViewFrame.BESIDE_MM / 2;
        double step = TYPE_MM + 2 * AIR_MM;
        for (int k = 0; k * step < 2 * bottomMm; k++) {
            double at = y + (k % 2 == 0 ? -1 : 1) * ((k + 1) / 2) * step;
            Patch here = about(column, at, text);
            if (here.top() >= 0 && here.bottom() <= bottomMm && put(here, column, text)) {
                double end = left ? here.right() : here.left();
                drawing.line(end, at, x, y, Drawing.stroke(INK, 0.13));
                drawing.circle(x, y, 0.4, Drawing.filled(INK, INK, 0.1));
                return;
            }
        }
    }
}

package loopwright.paper.book;

import java.util.List;
import loopwright.loop.Steady;
import loopwright.paper.Mm;
import loopwright.quantity.Units;

/** The loop as a ring: its parts in order, and the coolant's temperature between them. */
final class LoopDiagram {

    private static final double WIDTH_MM = 170;
    private static final double ROW_MM = 34;
    private static final double BOX_MM = 30;
    private static final double TALL_MM = 12;
    private static final double EDGE_MM = 4;
    private static final double TYPE_MM = 2.9;

    /** Boxes in a row. */
    private static final int ACROSS = 4;

    private LoopDiagram() {}

    static String svg(Steady state) {
        List<Steady.Stop> stops = state.stops();
        int rows = (stops.size() + ACROSS - 1) / ACROSS;
        Drawing drawing = new Drawing("the loop", WIDTH_MM, rows * ROW_MM + 2 * EDGE_MM);
        for (int i = 0; i < stops.size(); i++) {
            Steady.Stop stop = stops.get(i);
            double x = x(i);
            double y = y(i);
            drawing.box(x, y, BOX_MM, TALL_MM, Drawing.filled("#eef3f1", "#1c2024", Drawing.WIDE_MM));
            drawing.text(x + BOX_MM / 2, y + 5, TYPE_MM, "middle", stop.name());
            drawing.text(
                    x + BOX_MM / 2,
                    y + 9.5,
                    TYPE_MM,
                    "middle",
                    Mm.rounded(stop.lossPa() / Units.PA_PER_KPA, 1) + " kPa");
            boolean last = i == stops.size() - 1;
            double toX = last ? x(0) : x(i + 1);
            double toY = last ? y(0) : y(i + 1);
            arrow(drawing, x, y, toX, toY, Mm.rounded(stop.outC(), 1) + " C");
        }
        return drawing.svg();
    }

    private static double x(int i) {
        int row = i / ACROSS;
        int column = row % 2 == 0 ? i % ACROSS : ACROSS - 1 - i % ACROSS;
        return EDGE_MM + column * (WIDTH_MM - 2 * EDGE_MM - BOX_MM) / (ACROSS - 1);
    }

    private static double y(int i) {
        int row = i / ACROSS;
        return EDGE_MM + row * ROW_MM;
    }

    private static void arrow(Drawing drawing, double x, double y, double toX, double toY, String label) {
        String line = Drawing.stroke("#3c6e8f", Drawing.WIDE_MM);
        if (toY > y) {
            drawing.line(x + BOX_MM / 2, y + TALL_MM, x + BOX_MM / 2, toY, line);
            drawing.text(x + BOX_MM / 2 + 2, (y + TALL_MM + toY) / 2, TYPE_MM, "start", label);
        } else if (toY < y || Math.abs(toX - x) > 2 * BOX_MM) { // back to where it began, round the outside
            double low = y + TALL_MM + 6;
            drawing.line(x + BOX_MM / 2, y + TALL_MM, x + BOX_MM / 2, low, line);
            drawing.line(x + BOX_MM / 2, low, 1.5, low, line);
            drawing.line(1.5, low, 1.5, toY + TALL_MM / 2, line);
            drawing.line(1.5, toY + TALL_MM / 2, toX, toY + TALL_MM / 2, line);
            drawing.text(x + BOX_MM / 2 + 2, low - 1.5, TYPE_MM, "start", label);
        } else {
            double from = toX > x ? x + BOX_MM : x;
            double to = toX > x ? toX : toX + BOX_MM;
            drawing.line(from, y + TALL_MM / 2, to, y + TALL_MM / 2, line);
            drawing.text((from + to) / 2, y + TALL_MM / 2 - 1.5, TYPE_MM, "middle", label);
        }
    }
}

package loopwright.paper.sheet;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Leaf;
import loopwright.workshop.drawing.Mark;
import loopwright.workshop.drawing.Pen;

/**
 * A drawing as DXF, release 12, ASCII, in millimetres, seen as on paper. Release 12 has no field for units: a comment
 * and a line of text say so.
 *
 * <p>Layers are named as {@link Layer}: take CUT and DRILL for a machine. Windows are closed polylines with bulges.
 *
 * <p>Source: the published reference of DXF group codes, release 12.
 */
public final class DrawingDxf {

    /** Bulge of a quarter of a circle, anticlockwise: tan(90°/4). */
    private static final String QUARTER = "0.41421356237";

    private static final int CONTINUOUS_COLOUR = 7;
    private static final int TEXT_GAP_HMM = 600;

    private final PrintWriter out;

    private DrawingDxf(PrintWriter out) {
        this.out = out;
    }

    /** Writes a leaf's drawing; does not close the writer. */
    public static void write(Leaf leaf, PrintWriter out) {
        new DrawingDxf(out).leaf(leaf);
        out.flush();
    }

    private void leaf(Leaf leaf) {
        Area bounds = leaf.drawing().bounds();
        pair(
                999,
                "Units: millimetres. " + ascii(leaf.title().title()) + ", "
                        + ascii(leaf.title().supplement()));
        header(bounds);
        tables();
        pair(0, "SECTION");
        pair(2, "ENTITIES");
        leaf.drawing().marks().forEach(this::mark);
        int y = bounds.bottomHmm() - TEXT_GAP_HMM;
        for (String line : List.of(
                "Units: millimetres, 1:1. " + leaf.title().title() + ", "
                        + leaf.title().supplement(),
                leaf.title().identification())) {
            mark(new Mark.Text(Layer.WORDS, new Dot(bounds.leftHmm(), y), 250, Mark.Stand.STARTS, line));
            y -= TEXT_GAP_HMM;
        }
        for (String line : leaf.cautions()) {
            mark(new Mark.Text(Layer.WORDS, new Dot(bounds.leftHmm(), y), 250, Mark.Stand.STARTS, line));
            y -= TEXT_GAP_HMM;
        }
        pair(0, "ENDSEC");
        pair(0, "EOF");
    }

    private void header(Area bounds) {
        pair(0, "SECTION");
        pair(2, "HEADER");
        pair(9, "$ACADVER");
        pair(1, "AC1009");
        pair(9, "$EXTMIN");
        point(10, new Dot(bounds.leftHmm(), bounds.bottomHmm()));
        pair(9, "$EXTMAX");
        point(10, new Dot(bounds.rightHmm(), bounds.topHmm()));
        pair(0, "ENDSEC");
    }

    private void tables() {
        pair(0, "SECTION");
        pair(2, "TABLES");
        pair(0, "TABLE");
        pair(2, "LTYPE");
        pair(70, Integer.toString(Pen.values().length));
        for (Pen pen : Pen.values()) {
            lineType(pen);
        }
        pair(0, "ENDTAB");
        pair(0, "TABLE");
        pair(2, "LAYER");
        pair(70, Integer.toString(Layer.values().length));
        for (Layer layer : Layer.values()) {
            pair(0, "LAYER");
            pair(2, layer.name());
            pair(70, "0");
            pair(62, Integer.toString(CONTINUOUS_COLOUR));
            pair(6, typeName(layer.pen()));
        }
        pair(0, "ENDTAB");
        pair(0, "TABLE");
        pair(2, "STYLE");
        pair(70, "1");
        pair(0, "STYLE");
        pair(2, "STANDARD");
        pair(70, "0");
        pair(40, "0");
        pair(41, "1");
        pair(50, "0");
        pair(71, "0");
        pair(42, "2.5");
        pair(3, "txt");
        pair(4, "");
        pair(0, "ENDTAB");
        pair(0, "ENDSEC");
    }

    private static String typeName(Pen pen) {
        return pen.dashesHmm().isEmpty() ? "CONTINUOUS" : pen.name();
    }

    /** Dashes are positive, gaps negative. */
    private void lineType(Pen pen) {
        pair(0, "LTYPE");
        pair(2, pen.dashesHmm().isEmpty() && pen == Pen.WIDE ? "CONTINUOUS" : pen.name());
        pair(70, "0");
        pair(3, "");
        pair(72, "65");
        pair(73, Integer.toString(pen.dashesHmm().size()));
        pair(40, mm(pen.dashesHmm().stream().mapToInt(Integer::intValue).sum()));
        for (int i = 0; i < pen.dashesHmm().size(); i++) {
            pair(49, mm((i % 2 == 0 ? 1 : -1) * pen.dashesHmm().get(i)));
        }
    }

    private void mark(Mark mark) {
        if (mark instanceof Mark.Line line) {
            entity("LINE", mark.layer());
            point(10, line.from());
            point(11, line.to());
        } else if (mark instanceof Mark.Circle circle) {
            entity("CIRCLE", mark.layer());
            point(10, circle.centre());
            pair(40, half(circle.diameterHmm()));
        } else if (mark instanceof Mark.Rounded box) {
            outline(box);
        } else if (mark instanceof Mark.Text text) {
            text(text);
        }
    }

    private void text(Mark.Text text) {
        entity("TEXT", text.layer());
        point(10, text.at());
        pair(40, mm(text.heightHmm()));
        pair(1, ascii(text.text()));
        pair(50, text.stand().isUpwards() ? "90" : "0");
        pair(72, Integer.toString(text.stand().halves()));
        point(11, text.at());
        pair(73, "2");
    }

    /** Anticlockwise; each corner is an arc from the vertex that carries the bulge to the next. */
    private void outline(Mark.Rounded box) {
        Area area = box.area();
        int r = box.radiusHmm();
        entity("POLYLINE", box.layer());
        pair(66, "1");
        point(10, new Dot(0, 0));
        pair(70, "1");
        vertex(box, new Dot(area.leftHmm() + r, area.bottomHmm()), false);
        vertex(box, new Dot(area.rightHmm() - r, area.bottomHmm()), true);
        vertex(box, new Dot(area.rightHmm(), area.bottomHmm() + r), false);
        vertex(box, new Dot(area.rightHmm(), area.topHmm() - r), true);
        vertex(box, new Dot(area.rightHmm() - r, area.topHmm()), false);
        vertex(box, new Dot(area.leftHmm() + r, area.topHmm()), true);
        vertex(box, new Dot(area.leftHmm(), area.topHmm() - r), false);
        vertex(box, new Dot(area.leftHmm(), area.bottomHmm() + r), true);
        entity("SEQEND", box.layer());
    }

    /** With sharp corners both vertices of a corner are one, and only one is written. */
    private void vertex(Mark.Rounded box, Dot at, boolean beforeCorner) {
        if (box.radiusHmm() == 0 && beforeCorner) {
            return;
        }
        entity("VERTEX", box.layer());
        point(10, at);
        if (beforeCorner) {
            pair(42, QUARTER);
        }
    }

    private void entity(String kind, Layer layer) {
        pair(0, kind);
        pair(8, layer.name());
    }

    /** A point: x under the code, y under the code and ten, z is 0. */
    private void point(int code, Dot at) {
        pair(code, mm(at.xHmm()));
        pair(code + 10, mm(at.yHmm()));
        pair(code + 20, "0");
    }

    private void pair(int code, String value) {
        out.print(code);
        out.print('\n');
        out.print(value);
        out.print('\n');
    }

    private static String mm(int hmm) {
        return Hundredths.toMm(hmm).toPlainString();
    }

    private static String half(int hmm) {
        return BigDecimal.valueOf(5L * hmm, 3).toPlainString();
    }

    /** The signs that release 12 writes in its own way; anything else outside ASCII becomes a question mark. */
    private static String ascii(String text) {
        return text.replace("%", "%%%")
                .replace("\u00d8", "%%c")
                .replace("\u00b1", "%%p")
                .replaceAll("[^\\x20-\\x7e]", "?");
    }
}

package loopwright.paper.sheet;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;
import loopwright.workshop.drawing.Sheet;

/** A sheet as SVG in real millimetres: a unit is a millimetre. Each kind of mark has its class, like {@code cut}. */
public final class SheetSvg {

    /** Size of a font over the height of its capitals; sans serif fonts have about this. */
    private static final double SIZE_PER_CAPITAL = 1 / 0.72;

    private final PrintWriter out;
    private final int heightHmm;

    private SheetSvg(PrintWriter out, int heightHmm) {
        this.out = out;
        this.heightHmm = heightHmm;
    }

    /** Writes a sheet; does not close the writer. */
    public static void write(Sheet sheet, PrintWriter out) {
        new SheetSvg(out, sheet.paper().heightHmm()).sheet(sheet);
        out.flush();
    }

    private void sheet(Sheet sheet) {
        String width = mm(sheet.paper().widthHmm());
        String height = mm(sheet.paper().heightHmm());
        line("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        line("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "mm\" height=\"" + height
                + "mm\" viewBox=\"0 0 " + width + " " + height + "\">");
        line("<title>" + escaped(sheet.name()) + "</title>");
        line("<style>");
        line("path, circle, rect { fill: none; stroke: #000 }");
        line("text { font-family: sans-serif; fill: #000; stroke: none }");
        for (Layer layer : Layer.values()) {
            line(style(layer));
        }
        line("</style>");
        for (int i = 0; i < sheet.layers().size(); i++) {
            placed(sheet.layers().get(i), i + 1);
        }
        line("</svg>");
    }

    private static String style(Layer layer) {
        List<String> dashes = new ArrayList<>();
        layer.pen().dashesHmm().forEach(d -> dashes.add(mm(d)));
        return "." + name(layer) + " { stroke-width: " + mm(layer.pen().widthHmm())
                + (dashes.isEmpty() ? "" : "; stroke-dasharray: " + String.join(" ", dashes)) + " }";
    }

    /** A layer's class. */
    static String name(Layer layer) {
        return layer.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void placed(Sheet.Placed placed, int number) {
        Area clip = placed.clip();
        line("<clipPath id=\"clip-" + number + "\"><rect x=\"" + mm(clip.leftHmm()) + "\" y=\""
                + mm(heightHmm - clip.topHmm()) + "\" width=\"" + mm(clip.widthHmm()) + "\" height=\""
                + mm(clip.heightHmm()) + "\"/></clipPath>");
        line("<g clip-path=\"url(#clip-" + number + ")\">");
        Dot by = new Dot(placed.byXHmm(), placed.byYHmm());
        placed.marks().forEach(m -> mark(m, by));
        line("</g>");
    }

    private void mark(Mark mark, Dot by) {
        String kind = " class=\"" + name(mark.layer()) + "\"";
        if (mark instanceof Mark.Line line) {
            line("<path" + kind + " d=\"M" + point(line.from(), by) + "L" + point(line.to(), by) + "\"/>");
        } else if (mark instanceof Mark.Circle circle) {
            Dot at = circle.centre().plus(by.xHmm(), by.yHmm());
            line("<circle" + kind + " cx=\"" + mm(at.xHmm()) + "\" cy=\"" + mm(heightHmm - at.yHmm()) + "\" r=\""
                    + half(circle.diameterHmm()) + "\"/>");
        } else if (mark instanceof Mark.Rounded box) {
            Area area = box.area();
            line("<rect" + kind + " x=\"" + mm(area.leftHmm() + by.xHmm()) + "\" y=\""
                    + mm(heightHmm - area.topHmm() - by.yHmm()) + "\" width=\"" + mm(area.widthHmm()) + "\" height=\""
                    + mm(area.heightHmm()) + "\" rx=\"" + mm(box.radiusHmm()) + "\"/>");
        } else if (mark instanceof Mark.Text text) {
            text(text, by);
        }
    }

    private void text(Mark.Text text, Dot by) {
        Dot at = text.at().plus(by.xHmm(), by.yHmm());
        int down = text.heightHmm() / 2;
        boolean up = text.stand().isUpwards();
        String x = mm(at.xHmm() + (up ? down : 0));
        String y = mm(heightHmm - at.yHmm() + (up ? 0 : down));
        String anchor = List.of("start", "middle", "end").get(text.stand().halves());
        line("<text x=\"" + x + "\" y=\"" + y + "\" text-anchor=\"" + anchor + "\" font-size=\""
                + String.format(Locale.ROOT, "%.2f", text.heightHmm() * SIZE_PER_CAPITAL / Hundredths.PER_MM) + "\""
                + (up ? " transform=\"rotate(-90 " + x + " " + y + ")\"" : "") + ">" + escaped(text.text())
                + "</text>");
    }

    private String point(Dot dot, Dot by) {
        return mm(dot.xHmm() + by.xHmm()) + " " + mm(heightHmm - dot.yHmm() - by.yHmm());
    }

    private static String mm(int hmm) {
        return Hundredths.toMm(hmm).stripTrailingZeros().toPlainString();
    }

    /** Half a length: it may have three decimals. */
    private static String half(int hmm) {
        return BigDecimal.valueOf(5L * hmm, 3).stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        return text.chars()
                .mapToObj(c -> switch (c) {
                    case '&' -> "&amp;";
                    case '<' -> "&lt;";
                    case '>' -> "&gt;";
                    default -> String.valueOf((char) c);
                })
                .collect(Collectors.joining());
    }

    private void line(String text) {
        out.print(text);
        out.print('\n');
    }
}

package loopwright.paper.book;

import java.util.Locale;

/**
 * A drawing as SVG: millimetres on paper, x to the right, y down.
 *
 * <p>Lines as ISO 128-2 has them: continuous wide for outlines, continuous narrow for dimensions, dashed for what is kept free.
 */
final class Drawing {

    /** Line widths of ISO 128-2, group 0.5: wide and narrow, mm. */
    static final double WIDE_MM = 0.5;

    static final double NARROW_MM = 0.25;

    private final StringBuilder out = new StringBuilder();
    private final double widthMm;
    private final double heightMm;
    private final String title;

    Drawing(String title, double widthMm, double heightMm) {
        this.title = title;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** A rectangle. */
    Drawing box(double x, double y, double width, double height, String style) {
        out.append(String.format(
                        Locale.ROOT,
                        "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" %s/>",
                        n(x),
                        n(y),
                        n(width),
                        n(height),
                        style))
                .append('\n');
        return this;
    }

    /** A circle. */
    Drawing circle(double x, double y, double radius, String style) {
        out.append(String.format(
                        Locale.ROOT, "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" %s/>", n(x), n(y), n(radius), style))
                .append('\n');
        return this;
    }

    /** A straight line. */
    Drawing line(double x1, double y1, double x2, double y2, String style) {
        out.append(String.format(
                        Locale.ROOT,
                        "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" %s/>",
                        n(x1),
                        n(y1),
                        n(x2),
                        n(y2),
                        style))
                .append('\n');
        return this;
    }

    /**
     * Text.
     *
     * @param sizeMm height of the type
     * @param anchor {@code start}, {@code middle} or {@code end}
     */
    Drawing text(double x, double y, double sizeMm, String anchor, String text) {
        out.append(String.format(
                        Locale.ROOT,
                        "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\">%s</text>",
                        n(x),
                        n(y),
                        n(sizeMm),
                        anchor,
                        Html.escaped(text)))
                .append('\n');
        return this;
    }

    /** The stroke of a line. */
    static String stroke(String colour, double widthMm) {
        return "fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"" + n(widthMm) + "\"";
    }

    /** An outline that is filled. */
    static String filled(String fill, String colour, double widthMm) {
        return "fill=\"" + fill + "\" stroke=\"" + colour + "\" stroke-width=\"" + n(widthMm) + "\"";
    }

    /** A dashed outline. */
    static String dashed(String colour, double widthMm) {
        return stroke(colour, widthMm) + " stroke-dasharray=\"2 1\"";
    }

    /** The whole element. */
    String svg() {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" width=\"" + n(widthMm) + "mm\" height=\""
                + n(heightMm) + "mm\" viewBox=\"0 0 " + n(widthMm) + " " + n(heightMm)
                + "\" font-family=\"Liberation Sans, Arial, sans-serif\" fill=\"#1c2024\">\n<title>"
                + Html.escaped(title) + "</title>\n" + out + "</svg>\n";
    }

    /** A number with at most two decimals, the same everywhere. */
    static String n(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        text = text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
        return text.equals("-0") ? "0" : text;
    }
}

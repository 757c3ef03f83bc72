package loopwright.paper.sheet;

import java.io.IOException;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Mark;
import loopwright.workshop.drawing.Pen;
import loopwright.workshop.drawing.Sheet;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** Draws marks on a page. */
final class PdfPen {

    /** Points in a hundredth of a millimetre: 72 an inch of 25.4 mm. */
    private static final double POINTS_PER_HMM = 72 / 2540.0;

    /** Handle of a cubic curve that is a quarter of a circle, off by 0.03 % of the radius at most. */
    private static final double QUARTER = 0.5522847498;

    private static final float GLYPH_UNITS = 1000;

    private final PDPageContentStream content;
    private final PDFont font;
    private final Glyphs glyphs;

    PdfPen(PDPageContentStream content, PDFont font) {
        this.content = content;
        this.font = font;
        this.glyphs = new Glyphs(font);
    }

    /** A length in points. */
    static float points(double hmm) {
        return (float) (hmm * POINTS_PER_HMM);
    }

    /** Whether a letter was drawn as a question mark, as the font lacks it. */
    boolean lackedLetters() {
        return glyphs.lackedAny();
    }

    /** Draws what is put on a sheet. */
    void draw(Sheet.Placed placed) throws IOException {
        Area clip = placed.clip();
        content.saveGraphicsState();
        content.addRect(
                points(clip.leftHmm()), points(clip.bottomHmm()), points(clip.widthHmm()), points(clip.heightHmm()));
        content.clip();
        for (Mark mark : placed.marks()) {
            mark(mark, new Dot(placed.byXHmm(), placed.byYHmm()));
        }
        content.restoreGraphicsState();
    }

    /** Draws a mark, moved by as much. */
    void mark(Mark mark, Dot by) throws IOException {
        if (mark instanceof Mark.Text text) {
            text(text, by);
            return;
        }
        stroke(mark.layer().pen());
        if (mark instanceof Mark.Line line) {
            move(line.from().xHmm() + by.xHmm(), line.from().yHmm() + by.yHmm());
            line(line.to().xHmm() + by.xHmm(), line.to().yHmm() + by.yHmm());
        } else if (mark instanceof Mark.Circle circle) {
            double half = circle.diameterHmm() / 2.0;
            double x = circle.centre().xHmm() + (double) by.xHmm();
            double y = circle.centre().yHmm() + (double) by.yHmm();
            rounded(x - half, y - half, x + half, y + half, half);
        } else if (mark instanceof Mark.Rounded box) {
            Area area = box.area();
            rounded(
                    area.leftHmm() + (double) by.xHmm(),
                    area.bottomHmm() + (double) by.yHmm(),
                    area.rightHmm() + (double) by.xHmm(),
                    area.topHmm() + (double) by.yHmm(),
                    box.radiusHmm());
        }
        content.stroke();
    }

    private void stroke(Pen pen) throws IOException {
        content.setLineWidth(points(pen.widthHmm()));
        float[] dashes = new float[pen.dashesHmm().size()];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = points(pen.dashesHmm().get(i));
        }
        content.setLineDashPattern(dashes, 0);
    }

    private void move(double x, double y) throws IOException {
        content.moveTo(points(x), points(y));
    }

    private void line(double x, double y) throws IOException {
        content.lineTo(points(x), points(y));
    }

    private void rounded(double left, double bottom, double right, double top, double r) throws IOException {
        double h = r * (1 - QUARTER);
        move(left + r, bottom);
        line(right - r, bottom);
        curve(right - h, bottom, right, bottom + h, right, bottom + r);
        line(right, top - r);
        curve(right, top - h, right - h, top, right - r, top);
        line(left + r, top);
        curve(left + h, top, left, top - h, left, top - r);
        line(left, bottom + r);
        curve(left, bottom + h, left + h, bottom, left + r, bottom);
        content.closePath();
    }

    private void curve(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        content.curveTo(points(x1), points(y1), points(x2), points(y2), points(x3), points(y3));
    }

    /** Capitals as high as asked, so the font is larger than that. */
    private void text(Mark.Text text, Dot by) throws IOException {
        String letters = glyphs.printable(text.text());
        float size = points(text.heightHmm())
                * GLYPH_UNITS
                / font.getFontDescriptor().getCapHeight();
        float length = font.getStringWidth(letters) / GLYPH_UNITS * size;
        float before = length * text.stand().halves() / 2;
        float down = points(text.heightHmm()) / 2;
        float x = points(text.at().xHmm() + (double) by.xHmm());
        float y = points(text.at().yHmm() + (double) by.yHmm());
        content.beginText();
        content.setFont(font, size);
        content.setTextMatrix(
                text.stand().isUpwards()
                        ? new Matrix(0, 1, -1, 0, x + down, y - before)
                        : new Matrix(1, 0, 0, 1, x - before, y - down));
        content.showText(letters);
        content.endText();
    }
}

package loopwright.paper.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;
import loopwright.workshop.drawing.Paper;
import loopwright.workshop.drawing.Sheet;
import loopwright.workshop.drawing.Sheets;
import loopwright.workshop.template.Demo;
import loopwright.workshop.template.Hole;
import loopwright.workshop.template.PanelTemplate;
import loopwright.workshop.template.Templates;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Measures the PDF as somebody with a good rule would: on pixels, 600 an inch, where 0.1 mm is 2.4. */
class SheetPdfTest {

    private static final int DPI = 600;
    private static final double PIXELS_PER_MM = DPI / 25.4;

    private static final PanelTemplate LEFT =
            Templates.of(Demo.leftOfSlim()).panels().get(0);
    private static final List<Sheet> SHEETS = Sheets.on(Paper.A4, List.of(LEFT.leaf()));

    private static byte[] pdf(List<Sheet> sheets) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SheetPdf.write("test", "identity", sheets, out);
        return out.toByteArray();
    }

    private static BufferedImage picture(Sheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(List.of(sheet)))) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
        }
    }

    /** Positions of the middles of dark runs along a line of pixels, in mm from the left or the bottom. */
    private static List<Double> dark(BufferedImage image, boolean across, double atMm, double fromMm, double toMm) {
        List<Double> out = new ArrayList<>();
        int start = -1;
        for (int i = pixel(fromMm); i <= pixel(toMm); i++) {
            int x = across ? i : pixel(atMm);
            int y = image.getHeight() - 1 - (across ? pixel(atMm) : i);
            boolean isDark = image.getRaster().getSample(x, y, 0) < 128;
            if (isDark && start < 0) {
                start = i;
            } else if (!isDark && start >= 0) {
                out.add((start + i) / 2.0 / PIXELS_PER_MM);
                start = -1;
            }
        }
        return out;
    }

    private static int pixel(double mm) {
        return (int) Math.round(mm * PIXELS_PER_MM);
    }

    @Test
    void barsAreAHundredMillimetresBothWays() throws IOException {
        Sheet tile = SHEETS.get(SHEETS.size() - 1);
        BufferedImage image = picture(tile);
        assertThat(image.getWidth()).isCloseTo(pixel(210), within(1));
        assertThat(image.getHeight()).isCloseTo(pixel(297), within(1));
        // Only the ticks at the ends reach 2.5 mm from the bar.
        List<Mark.Line> bars = bars(tile);
        Dot across = bars.get(0).from();
        List<Double> ends =
                dark(image, true, across.yHmm() / 100.0 + 2.5, across.xHmm() / 100.0 - 3, across.xHmm() / 100.0 + 103);
        assertThat(ends.get(ends.size() - 1) - ends.get(0)).isCloseTo(100.0, within(0.1));
        Dot up = bars.get(1).from();
        List<Double> upright =
                dark(image, false, up.xHmm() / 100.0 + 2.5, up.yHmm() / 100.0 - 3, up.yHmm() / 100.0 + 103);
        assertThat(upright.get(upright.size() - 1) - upright.get(0)).isCloseTo(100.0, within(0.1));
    }

    /** The two bars: the longest lines of their layer. */
    private static List<Mark.Line> bars(Sheet sheet) {
        return sheet.layers().stream()
                .flatMap(l -> l.marks().stream())
                .filter(m -> m instanceof Mark.Line line && line.layer().name().equals("BAR"))
                .map(Mark.Line.class::cast)
                .filter(l -> l.from().distanceHmm(l.to()) > 5000)
                .toList();
    }

    @Test
    void holesAreWhereTheyShouldBe() throws IOException {
        int measured = 0;
        int pitches = 0;
        for (Sheet sheet : SHEETS) {
            Sheet.Placed placed = sheet.layers().get(0);
            List<Dot> whole = whole(placed);
            if (whole.size() < 4) {
                continue;
            }
            BufferedImage image = picture(sheet);
            List<double[]> found = new ArrayList<>();
            whole.forEach(dot -> found.add(centre(image, dot.plus(placed.byXHmm(), placed.byYHmm()))));
            for (int i = 0; i < whole.size(); i++) {
                for (int j = 0; j < i; j++) {
                    double is = Math.hypot(found.get(i)[0] - found.get(j)[0], found.get(i)[1] - found.get(j)[1]);
                    double should = whole.get(i).distanceHmm(whole.get(j)) / 100;
                    assertThat(is).isCloseTo(should, within(0.1));
                    measured += should == 105 || should == 15 ? 1 : 0;
                    pitches += should == 120 ? 1 : 0;
                }
            }
        }
        assertThat(measured).as("distances of 105 and 15 that were measured").isGreaterThan(4);
        assertThat(pitches)
                .as("distances from fan to fan that were measured: 120")
                .isPositive();
    }

    /** Middles of screw holes that a tile shows whole. */
    private static List<Dot> whole(Sheet.Placed placed) {
        return LEFT.holes().stream()
                .filter(h -> h.tag().purpose() == Hole.Purpose.SCREW)
                .filter(h -> placed.marks().equals(LEFT.leaf().drawing().marks()))
                .filter(h -> placed.clip()
                        .holds(new Area(
                                h.reach().leftHmm() + placed.byXHmm() - 100,
                                h.reach().bottomHmm() + placed.byYHmm() - 100,
                                h.reach().rightHmm() + placed.byXHmm() + 100,
                                h.reach().topHmm() + placed.byYHmm() + 100)))
                .map(Hole::centre)
                .toList();
    }

    /** Middle of a circle of 3.4 from two chords 0.8 beside it, where no centre line runs. */
    private static double[] centre(BufferedImage image, Dot about) {
        double x = about.xHmm() / 100.0;
        double y = about.yHmm() / 100.0;
        double half = Math.sqrt(1.7 * 1.7 - 0.8 * 0.8);
        return new double[] {
            (near(dark(image, true, y + 0.8, x - 3, x + 3), x - half)
                            + near(dark(image, true, y + 0.8, x - 3, x + 3), x + half))
                    / 2,
            (near(dark(image, false, x + 0.8, y - 3, y + 3), y - half)
                            + near(dark(image, false, x + 0.8, y - 3, y + 3), y + half))
                    / 2
        };
    }

    private static double near(List<Double> positions, double wanted) {
        double best = Double.NaN;
        for (double position : positions) {
            if (!(Math.abs(best - wanted) <= Math.abs(position - wanted))) {
                best = position;
            }
        }
        assertThat(best).as("dark at %s", positions).isCloseTo(wanted, within(0.5));
        return best;
    }

    /** The same mark stands on both tiles at the same point of the drawing. */
    @Test
    void registerMarksAgree() {
        int shared = 0;
        for (Sheet one : SHEETS) {
            for (Sheet other : SHEETS) {
                for (Mark.Circle mark : registers(one)) {
                    for (Mark.Circle same : registers(other)) {
                        shared += !one.equals(other) && mark.equals(same) ? 1 : 0;
                    }
                }
            }
        }
        assertThat(shared).as("marks that two tiles share, both ways").isGreaterThanOrEqualTo(4);
        for (Sheet sheet : SHEETS) {
            Sheet.Placed drawing = sheet.layers().get(0);
            if (!registers(sheet).isEmpty()) {
                Sheet.Placed marks = sheet.layers().get(1);
                assertThat(marks.byXHmm()).isEqualTo(drawing.byXHmm());
                assertThat(marks.byYHmm()).isEqualTo(drawing.byYHmm());
            }
        }
    }

    private static List<Mark.Circle> registers(Sheet sheet) {
        return sheet.layers().stream()
                .flatMap(l -> l.marks().stream())
                .filter(m ->
                        m instanceof Mark.Circle circle && circle.layer().name().equals("REGISTER"))
                .map(Mark.Circle.class::cast)
                .toList();
    }

    @Test
    void tellsViewersNotToScaleAndCarriesItsFont() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SHEETS))) {
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
            assertThat(document.getNumberOfPages()).isEqualTo(SHEETS.size());
            for (var name : document.getPage(0).getResources().getFontNames()) {
                PDFont font = document.getPage(0).getResources().getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).endsWith("LiberationSans");
            }
            assertThat(document.getDocumentInformation().getCreationDate()).isNull();
            assertThat(new PDFTextStripper().getText(document)).contains("100.0 \u00b10.3", "\u00d8114.0");
        }
    }

    private static String printed(String words) throws IOException {
        Mark.Text text = new Mark.Text(Layer.WORDS, new Dot(3000, 20_000), 250, Mark.Stand.STARTS, words);
        Area page = new Area(0, 0, Paper.A4.widthHmm(), Paper.A4.heightHmm());
        Sheet sheet = new Sheet(words, Paper.A4, List.of(new Sheet.Placed(List.of(text), page, 0, 0)));
        try (PDDocument document = Loader.loadPDF(pdf(List.of(sheet)))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void whatTheFontLacksIsAQuestionMarkAndIsTold() throws IOException {
        String told = "A ? above may stand for a letter that this font lacks.";
        assertThat(printed("a\u7d30\u3044b")).contains("a??b", told);
        assertThat(printed("a\ud83e\uddcab")).contains("a?b", told);
        assertThat(printed("a\ud83eb")).contains("a?b", told);
        assertThat(printed("a\u0e01b\u0627c")).contains("a?b", told);
        assertThat(printed("a\u20ddb")).contains("a?b", told);
        assertThat(printed("caf\u00e9 \u0416 why?"))
                .contains("caf\u00e9 \u0416 why?")
                .doesNotContain(told);
        assertThat(printed("e\u0301")).doesNotContain(told);
        assertThat(printed("\u05d0\u05d1")).doesNotContain(told, "?");
    }

    @Test
    void sameSheetsGiveTheSameBytes() {
        assertThat(pdf(SHEETS)).isEqualTo(pdf(Sheets.on(Paper.A4, List.of(LEFT.leaf()))));
    }
}

package loopwright.paper.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.CRC32;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;
import loopwright.workshop.drawing.Paper;
import loopwright.workshop.drawing.Sheet;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Sheets as a PDF at 1:1: a millimetre on a sheet is 72/25.4 points, and viewers are told not to scale what they print.
 *
 * <p>No date is in it, and its id is made of what identifies the answer: the same sheets give the same bytes.
 */
public final class SheetPdf {

    /** Where the font comes from: Liberation Sans, SIL Open Font License, with the PDF library. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    /** Below the frame, where a sheet is bare: its height there, and that of its capitals (ISO 3098). */
    private static final int NOTE_Y_HMM = 700;

    private static final int NOTE_HMM = 180;

    private static final Mark.Text LACKING = new Mark.Text(
            Layer.WORDS,
            new Dot(Paper.FILING_HMM, NOTE_Y_HMM),
            NOTE_HMM,
            Mark.Stand.STARTS,
            "A ? above may stand for a letter that this font lacks.");

    private SheetPdf() {}

    /**
     * Writes sheets, a page each; does not close the stream.
     *
     * @param title for the viewer's window
     * @param identity what the answer is identified by
     * @throws UncheckedIOException if the stream cannot be written
     */
    public static void write(String title, String identity, List<Sheet> sheets, OutputStream out) {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(id(identity));
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setSubject(identity);
            PDViewerPreferences wishes = new PDViewerPreferences(new COSDictionary());
            wishes.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
            document.getDocumentCatalog().setViewerPreferences(wishes);
            PDFont font = font(document);
            for (Sheet sheet : sheets) {
                page(document, font, sheet);
            }
            document.save(out, CompressParameters.NO_COMPRESSION);
        } catch (IOException e) {
            throw new UncheckedIOException("the PDF \"" + title + "\" cannot be written: " + e.getMessage(), e);
        }
    }

    private static long id(String identity) {
        CRC32 sum = new CRC32();
        sum.update(identity.getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }

    private static PDFont font(PDDocument document) throws IOException {
        try (InputStream ttf = PDDocument.class.getResourceAsStream(FONT)) {
            if (ttf == null) {
                throw new IllegalStateException("the font " + FONT + " is not in the program");
            }
            return PDType0Font.load(document, ttf, true);
        }
    }

    private static void page(PDDocument document, PDFont font, Sheet sheet) throws IOException {
        PDPage page = new PDPage(new PDRectangle(
                PdfPen.points(sheet.paper().widthHmm()),
                PdfPen.points(sheet.paper().heightHmm())));
        document.addPage(page);
        try (PDPageContentStream content =
                new PDPageContentStream(document, page, PDPageContentStream.AppendMode.OVERWRITE, true)) {
            PdfPen pen = new PdfPen(content, font);
            for (Sheet.Placed placed : sheet.layers()) {
                pen.draw(placed);
            }
            if (pen.lackedLetters()) {
                pen.mark(LACKING, new Dot(0, 0));
            }
        }
    }
}

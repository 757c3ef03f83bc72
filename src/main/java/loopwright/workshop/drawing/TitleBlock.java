package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The title block of a sheet with the fields of ISO 7200, 180 mm wide.
 *
 * <p>Owner, creator, approval and, where the answer has none, the date stay blank for the workshop's own hand.
 *
 * @param identification of the drawing: what it was worked out from
 * @param supplement second line of the title
 * @param scale as ISO 5455 writes it, 1:1
 * @param date of issue, empty to be written by hand
 */
public record TitleBlock(
        String title, String supplement, String identification, String kind, String scale, String date) {

    /** Its width; ISO 7200. */
    public static final int WIDTH_HMM = 18_000;

    /** Its height here: three rows of fields. */
    public static final int HEIGHT_HMM = 3600;

    private static final int ROW_HMM = 1200;

    /** A field: where it starts and ends, mm from the left, its name and what stands in it. */
    private record Field(int row, int fromMm, int toMm, String name, String value) {}

    /** What is drawn for it, with its lower right corner at a point. */
    List<Mark> marks(Dot lowerRight, String sheet) {
        List<Mark> out = new ArrayList<>();
        Dot corner = lowerRight.plus(-WIDTH_HMM, 0);
        out.add(new Mark.Rounded(Layer.FRAME, Area.between(corner, lowerRight.plus(0, HEIGHT_HMM)), 0));
        for (Field field : fields(sheet)) {
            Dot at = corner.plus(field.fromMm() * 100, field.row() * ROW_HMM);
            Area box = Area.between(at, at.plus((field.toMm() - field.fromMm()) * 100, ROW_HMM));
            out.add(new Mark.Rounded(Layer.WORDS, box, 0));
            out.add(text(at.plus(100, ROW_HMM - 180), 180, field.name()));
            if (!field.value().isEmpty()) {
                out.add(text(at.plus(100, 580), 250, field.value()));
            }
        }
        out.add(text(corner.plus(4600, 2 * ROW_HMM + 220), 250, supplement));
        return out;
    }

    private List<Field> fields(String sheet) {
        return List.of(
                new Field(2, 0, 45, "Legal owner", ""),
                new Field(2, 45, 180, "Title, supplementary title", title),
                new Field(1, 0, 90, "Identification number", identification),
                new Field(1, 90, 140, "Document type", kind),
                new Field(1, 140, 180, "Date of issue", date),
                new Field(0, 0, 50, "Creator", ""),
                new Field(0, 50, 100, "Approval person", ""),
                new Field(0, 100, 125, "Revision", ""),
                new Field(0, 125, 150, "Scale", scale),
                new Field(0, 150, 180, "Sheet", sheet));
    }

    private static Mark text(Dot at, int heightHmm, String text) {
        return new Mark.Text(Layer.WORDS, at, heightHmm, Mark.Stand.STARTS, text);
    }
}

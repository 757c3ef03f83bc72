package loopwright.paper.book;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;

/**
 * Where on paper a view puts hundredths of a millimetre of the chassis: its scale, what it shows, the room round it.
 *
 * @param across what is shown from left to right, hundredths of a millimetre
 * @param up what is shown from below upwards
 * @param reduction millimetres of the chassis in one on paper
 */
record ViewFrame(View view, Reach across, Reach up, double reduction) {

    /** Width of the paper that a drawing may take, mm. */
    private static final double PAPER_MM = 174;

    /** Most height, mm. */
    private static final double TALLEST_MM = 205;

    /** Room beside a drawing, for numbers, mm. */
    static final double BESIDE_MM = 10;

    /** Room over and under a drawing, mm. */
    static final double OVER_MM = 6;

    private static final double HMM = 100;

    /** Scales that are drawn: those of ISO 5455 and steps between, as it allows where they are needed. */
    private static final double[] REDUCTIONS = {1, 2, 2.5, 3, 4, 5, 7.5, 10, 20};

    /** One view of boxes in an interior. */
    static ViewFrame of(View view, List<SpaceBox> boxes, double reduction) {
        return new ViewFrame(view, reach(boxes, view.across()), reach(boxes, view.up()), reduction);
    }

    /** The largest scale at which all views go onto a page. */
    static double reduction(List<SpaceBox> boxes) {
        for (double reduction : REDUCTIONS) {
            boolean fits = true;
            for (View view : View.values()) {
                ViewFrame frame = of(view, boxes, reduction);
                fits &= frame.paperWidthMm() <= PAPER_MM && frame.paperHeightMm() <= TALLEST_MM;
            }
            if (fits) {
                return reduction;
            }
        }
        return REDUCTIONS[REDUCTIONS.length - 1];
    }

    private static Reach reach(List<SpaceBox> boxes, Axis axis) {
        return new Reach(
                boxes.stream().mapToInt(b -> b.along(axis).from()).min().orElse(0),
                boxes.stream().mapToInt(b -> b.along(axis).to()).max().orElse(0));
    }

    double paperWidthMm() {
        return (across.to() - across.from()) / HMM / reduction + 2 * BESIDE_MM;
    }

    double paperHeightMm() {
        return (up.to() - up.from()) / HMM / reduction + 2 * OVER_MM;
    }

    double x(int hmm) {
        return BESIDE_MM + (hmm - across.from()) / HMM / reduction;
    }

    double y(int hmm) {
        return OVER_MM + (up.to() - hmm) / HMM / reduction;
    }

    /** A box on paper. */
    Patch patch(SpaceBox box) {
        Reach wide = box.along(view.across());
        Reach tall = box.along(view.up());
        return new Patch(x(wide.from()), y(tall.to()), x(wide.to()), y(tall.from()));
    }

    /** A rectangle on paper, mm; y down. */
    record Patch(double left, double top, double right, double bottom) {

        double width() {
            return right - left;
        }

        double height() {
            return bottom - top;
        }

        boolean meets(Patch other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }
    }
}

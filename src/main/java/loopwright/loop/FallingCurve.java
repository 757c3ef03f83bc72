package loopwright.loop;

import java.util.List;

/**
 * A curve through points that never rises: pressure against flow, head against flow.
 *
 * <p><b>Units.</b> Those of its points.
 *
 * <p><b>Valid for</b> any x: outside the points the value of the nearest end holds.
 *
 * <p><b>Accuracy.</b> Exact at the points; between two of them never outside their values, so no point of operation is
 * made up by an overshoot.
 *
 * <p><b>Source.</b> Piecewise cubic Hermite polynomials; inner slopes by [FritschButland1984] (weighted harmonic mean), end
 * slopes by the three-point formula, never rising ([Moler2004] ch. 3). Checked against hand-worked values.
 */
public final class FallingCurve {

    /** One point. */
    public record Point(double x, double y) {}

    private final List<Point> points;
    private final double[] slopes;

    /**
     * A curve through the points.
     *
     * @param points at least two, x rising strictly, y never rising, all finite
     * @throws IllegalArgumentException if they are not
     */
    public FallingCurve(List<Point> points) {
        this.points = List.copyOf(points);
        check(this.points);
        slopes = slopes(this.points);
    }

    /** First point. */
    public Point first() {
        return points.get(0);
    }

    /** Last point. */
    public Point last() {
        return points.get(points.size() - 1);
    }

    /** The value at x. */
    public double at(double x) {
        if (x <= first().x()) {
            return first().y();
        }
        if (x >= last().x()) {
            return last().y();
        }
        int i = 0;
        while (x > points.get(i + 1).x()) {
            i++;
        }
        return between(i, x);
    }

    /** How fast the value changes at x, never above 0; outside the points, the slope at the nearest end. */
    public double slopeAt(double x) {
        if (x <= first().x()) {
            return slopes[0];
        }
        if (x >= last().x()) {
            return slopes[slopes.length - 1];
        }
        int i = 0;
        while (x > points.get(i + 1).x()) {
            i++;
        }
        Point a = points.get(i);
        Point b = points.get(i + 1);
        double width = b.x() - a.x();
        double s = (x - a.x()) / width;
        double chord = (b.y() - a.y()) / width;
        double bow = (1 - s) * slopes[i] - s * slopes[i + 1] - (1 - 2 * s) * chord;
        double turn = 2 * chord - slopes[i] - slopes[i + 1];
        return Math.min(0, chord + (1 - 2 * s) * bow + s * (1 - s) * turn);
    }

    private double between(int i, double x) {
        Point a = points.get(i);
        Point b = points.get(i + 1);
        double width = b.x() - a.x();
        double s = (x - a.x()) / width;
        double bow = (1 - s) * slopes[i] - s * slopes[i + 1];
        double chord = (b.y() - a.y()) / width;
        double value = a.y() + s * (b.y() - a.y()) + width * s * (1 - s) * (bow - (1 - 2 * s) * chord);
        return Math.max(b.y(), Math.min(a.y(), value));
    }

    private static void check(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a curve needs two points but has " + points.size());
        }
        for (int i = 0; i < points.size(); i++) {
            Point p = points.get(i);
            boolean finite = Double.isFinite(p.x()) && Double.isFinite(p.y());
            boolean falls = i == 0
                    || (p.x() > points.get(i - 1).x()
                            && p.y() <= points.get(i - 1).y());
            if (!finite || !falls) {
                throw new IllegalArgumentException("x must rise and y must not, but point " + (i + 1) + " is " + p);
            }
        }
    }

    private static double[] slopes(List<Point> points) {
        int n = points.size();
        double[] width = new double[n - 1];
        double[] chord = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            width[i] = points.get(i + 1).x() - points.get(i).x();
            chord[i] = (points.get(i + 1).y() - points.get(i).y()) / width[i];
        }
        double[] slope = new double[n];
        if (n == 2) {
            slope[0] = chord[0];
            slope[1] = chord[0];
            return slope;
        }
        for (int i = 1; i < n - 1; i++) {
            slope[i] = innerSlope(width[i - 1], chord[i - 1], width[i], chord[i]);
        }
        slope[0] = endSlope(width[0], chord[0], width[1], chord[1]);
        slope[n - 1] = endSlope(width[n - 2], chord[n - 2], width[n - 3], chord[n - 3]);
        return slope;
    }

    private static double innerSlope(double widthBefore, double chordBefore, double widthAfter, double chordAfter) {
        if (chordBefore >= 0 || chordAfter >= 0) {
            return 0;
        }
        double before = 2 * widthAfter + widthBefore;
        double after = widthAfter + 2 * widthBefore;
        return (before + after) / (before / chordBefore + after / chordAfter);
    }

    private static double endSlope(double width, double chord, double nextWidth, double nextChord) {
        double slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
        // Never steeper than twice the chord, as the next chord does not rise; [FritschCarlson1980] allows three times.
        return Math.min(0, slope);
    }
}

package loopwright.loop;

import java.util.List;
import loopwright.loop.FallingCurve.Point;

/**
 * A curve through points that rises strictly: what a passage takes of the pressure against the flow.
 *
 * <p><b>Units.</b> Those of its points.
 *
 * <p><b>Valid for</b> any x: outside the points the value of the nearest end holds.
 *
 * <p><b>Accuracy.</b> Exact at the points; between two of them it rises strictly from the one's value to the other's.
 *
 * <p><b>Source.</b> The mirror image of {@link FallingCurve}: the same slopes, upside down.
 */
public final class RisingCurve {

    private final FallingCurve mirrored;

    /**
     * A curve through the points.
     *
     * @param points at least two, x and y rising strictly, all finite
     * @throws IllegalArgumentException if they are not
     */
    public RisingCurve(List<Point> points) {
        for (int i = 0; i < points.size(); i++) {
            Point p = points.get(i);
            boolean rises = i == 0
                    || (p.x() > points.get(i - 1).x()
                            && p.y() > points.get(i - 1).y());
            if (!(rises && Double.isFinite(p.x()) && Double.isFinite(p.y()))) {
                throw new IllegalArgumentException("x and y must rise, but point " + (i + 1) + " is " + p);
            }
        }
        mirrored = new FallingCurve(points.stream().map(RisingCurve::mirror).toList());
    }

    /** First point. */
    public Point first() {
        return mirror(mirrored.first());
    }

    /** Last point. */
    public Point last() {
        return mirror(mirrored.last());
    }

    /** The value at x. */
    public double at(double x) {
        return -mirrored.at(x);
    }

    private static Point mirror(Point point) {
        return new Point(point.x(), -point.y());
    }
}

package loopwright.plumbing.route;

import loopwright.catalog.basis.Axis;

/**
 * A box that no tube may enter.
 *
 * @param body what it belongs to, on a screen
 */
public record Solid(String body, Where low, Where high) {

    /** A box round the line between two points. */
    public static Solid around(String body, Where a, Where b, int radiusHmm) {
        return new Solid(
                body,
                new Where(
                        Math.min(a.x(), b.x()) - radiusHmm,
                        Math.min(a.y(), b.y()) - radiusHmm,
                        Math.min(a.z(), b.z()) - radiusHmm),
                new Where(
                        Math.max(a.x(), b.x()) + radiusHmm,
                        Math.max(a.y(), b.y()) + radiusHmm,
                        Math.max(a.z(), b.z()) + radiusHmm));
    }

    /** A box round the line between two points that ends where the line does. */
    public static Solid sleeve(String body, Where a, Where b, int radiusHmm) {
        Solid all = around(body, a, b, radiusHmm);
        Where low = all.low();
        Where high = all.high();
        for (Axis axis : Axis.values()) {
            if (a.along(axis) != b.along(axis)) {
                low = low.with(axis, Math.min(a.along(axis), b.along(axis)));
                high = high.with(axis, Math.max(a.along(axis), b.along(axis)));
            }
        }
        return new Solid(body, low, high);
    }

    /** The box larger by so much on every side. */
    public Solid grown(int byHmm) {
        return around(body, low, high, byHmm);
    }

    /** The box longer by so much at both ends of an axis. */
    public Solid longer(Axis axis, int byHmm) {
        return new Solid(body, low.with(axis, low.along(axis) - byHmm), high.with(axis, high.along(axis) + byHmm));
    }

    /** Whether the two have more in common than faces. */
    public boolean meets(Solid other) {
        return low.x() < other.high.x()
                && other.low.x() < high.x()
                && low.y() < other.high.y()
                && other.low.y() < high.y()
                && low.z() < other.high.z()
                && other.low.z() < high.z();
    }

    /** Whether a point is inside, not on a face. */
    public boolean holds(Where point) {
        return point.x() > low.x()
                && point.x() < high.x()
                && point.y() > low.y()
                && point.y() < high.y()
                && point.z() > low.z()
                && point.z() < high.z();
    }
}

package loopwright.plumbing.route;

import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;

/** A point in chassis coordinates, hundredths of a millimetre. */
public record Where(int x, int y, int z) implements Comparable<Where> {

    /** The coordinate along an axis. */
    public int along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** The point so far off along a heading. */
    public Where towards(Heading heading, int byHmm) {
        return with(heading.axis(), along(heading.axis()) + heading.sign() * byHmm);
    }

    /** The point with another coordinate along an axis. */
    public Where with(Axis axis, int value) {
        return switch (axis) {
            case X -> new Where(value, y, z);
            case Y -> new Where(x, value, z);
            case Z -> new Where(x, y, value);
        };
    }

    /** The way along the axes from here to there. */
    public int wayTo(Where there) {
        return Math.abs(x - there.x) + Math.abs(y - there.y) + Math.abs(z - there.z);
    }

    /** Straight from here to there. */
    public double straightTo(Where there) {
        double dx = x - there.x;
        double dy = y - there.y;
        double dz = z - there.z;
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    @Override
    public int compareTo(Where other) {
        int byX = Integer.compare(x, other.x);
        int byY = byX != 0 ? byX : Integer.compare(y, other.y);
        return byY != 0 ? byY : Integer.compare(z, other.z);
    }
}

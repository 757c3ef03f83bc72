package loopwright.power.cable;

import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;

/** A point in the chassis frame, hundredths of a millimetre. */
public record PointHmm(int x, int y, int z) {

    /** The coordinate along an axis. */
    public int along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** The point so far away in a direction. */
    public PointHmm moved(Heading heading, int hmm) {
        int by = heading.sign() * hmm;
        return switch (heading.axis()) {
            case X -> new PointHmm(x + by, y, z);
            case Y -> new PointHmm(x, y + by, z);
            case Z -> new PointHmm(x, y, z + by);
        };
    }

    /** The sum of the distances along the three axes, hundredths of a millimetre. */
    public int squareWayTo(PointHmm other) {
        return Math.abs(x - other.x) + Math.abs(y - other.y) + Math.abs(z - other.z);
    }
}

package loopwright.geometry;

import loopwright.catalog.basis.Axis;

/**
 * How far apart two boxes are: the largest signed separation along an axis.
 *
 * <p>Units: hundredths of a millimetre. Negative: they overlap, by that much along the axis in which they overlap
 * least.
 */
public final class Clearance {

    private Clearance() {}

    /** The clearance of two boxes. */
    public static int hmm(SpaceBox a, SpaceBox b) {
        int best = Integer.MIN_VALUE;
        for (Axis axis : Axis.values()) {
            SpaceBox.Reach ra = a.along(axis);
            SpaceBox.Reach rb = b.along(axis);
            best = Math.max(best, Math.max(rb.from() - ra.to(), ra.from() - rb.to()));
        }
        return best;
    }
}

package loopwright.catalog.basis;

import loopwright.quantity.Dimension;

/** A point in the chassis frame. */
public record Point(
        @Limits(min = -1000, max = 2000) Dimension xMm,
        @Limits(min = -1000, max = 2000) Dimension yMm,
        @Limits(min = -1000, max = 2000) Dimension zMm) {
    /** The coordinate along an axis. */
    public Dimension along(Axis axis) {
        return switch (axis) {
            case X -> xMm;
            case Y -> yMm;
            case Z -> zMm;
        };
    }
}

package loopwright.catalog.basis;

/** An axis-aligned box in the chassis frame. */
public record Box(Span xMm, Span yMm, Span zMm) {
    /** The span along an axis. */
    public Span along(Axis axis) {
        return switch (axis) {
            case X -> xMm;
            case Y -> yMm;
            case Z -> zMm;
        };
    }
}

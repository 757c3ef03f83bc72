package loopwright.catalog.basis;

import loopwright.quantity.Dimension;

/**
 * A threaded port of a part, in the part's own frame.
 *
 * @param alongMm along the part's length
 * @param acrossMm along its width
 * @param overMm along its height
 * @param looks the face it is in: tube leaves it that way
 * @param way whether coolant has to come in, go out, or may do either
 */
public record PartPort(String id, Dimension alongMm, Dimension acrossMm, Dimension overMm, PartFace looks, Way way) {

    /** Which way coolant goes through a port. */
    public enum Way {
        /** In only: marked so. */
        IN,
        /** Out only: marked so. */
        OUT,
        /** Either. */
        EITHER
    }
}

package loopwright.catalog.chassis;

import loopwright.catalog.basis.Limits;
import loopwright.quantity.Dimension;

/**
 * A raised cover on a mount.
 *
 * @param cover the cover part
 * @param over rings: the panel stays and is the screw seat; window: the panel is cut away, the cover's flange is the
 *     seat, and the mount's other seats are gone
 * @param lengthwiseMm centre of the cover along the mount, chassis coordinates
 * @param sidewaysMm centre of the cover across it
 */
public record RaisedCover(
        String mount,
        String cover,
        Over over,
        @Limits(min = -100, max = 1000) Dimension lengthwiseMm,
        @Limits(min = -100, max = 1000) Dimension sidewaysMm) {

    /** What is cut under it. */
    public enum Over {
        /** One ring a fan. */
        RINGS,
        /** One window. */
        WINDOW
    }
}

package loopwright.catalog.chassis;

import java.util.List;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Point;
import loopwright.quantity.Dimension;

/**
 * Ways of cables: through which holes, how deep it is behind the tray, and where what is too long can lie.
 *
 * @param holes named holes that cables can go through
 * @param behindTrayMm free depth between the tray and the side panel behind it
 * @param parking boxes where the rest of a cable can be put away
 */
public record Wiring(List<RoutingHole> holes, Dimension behindTrayMm, List<Parking> parking) {

    /**
     * A hole that cables go through.
     *
     * @param at its middle
     * @param longMm its long side
     * @param shortMm its short side
     */
    public record RoutingHole(
            String id,
            String title,
            Point at,
            @Limits(min = 5, max = 300) Dimension longMm,
            @Limits(min = 5, max = 300) Dimension shortMm) {}

    /** A box where cable can be put away. */
    public record Parking(String id, String title, Box box) {}
}

package loopwright.workshop.fasten;

import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.quantity.Dimension;

/**
 * What a screw goes into.
 *
 * @param threaded how thick the part with the thread is
 * @param behind free depth behind it: to the first tube of a radiator, to a fan's blades
 * @param before what the screw must not reach, in words
 */
public record ThreadSeat(
        ScrewThread thread, SeatMaterial material, Dimension threaded, Dimension behind, String before) {

    /** Whether the depth behind is a guess, or not known at all. */
    public boolean isDepthGuessed() {
        return switch (behind.known()) {
            case UNKNOWN, ASSUMED -> true;
            case DATASHEET, MEASURED -> false;
        };
    }
}

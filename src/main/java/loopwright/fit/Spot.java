package loopwright.fit;

import loopwright.catalog.basis.Pose;
import loopwright.catalog.chassis.Place;

/**
 * Where a part stands.
 *
 * @param name what its corner's coordinates are called; no two corners share one, so that their spreads do not cancel
 */
record Spot(String name, Pose pose) {

    /** The board's bay, for the board and what is plugged into it. */
    static Spot onBoard(Pose pose) {
        return new Spot("board-bay", pose);
    }

    /** A place. */
    static Spot in(Place place) {
        return new Spot("place." + place.id(), place.pose());
    }
}

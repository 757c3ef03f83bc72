package loopwright.fit;

import loopwright.catalog.basis.Pose;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Place;

/**
 * Where a part stands.
 *
 * @param corner address of its corner in the chassis's file; no two corners share one, so that their spreads do not
 *     cancel
 */
record Spot(String corner, Pose pose) {

    /** The board's bay, for the board and what is plugged into it. */
    static Spot onBoard(Chassis chassis) {
        return new Spot(
                chassis.id() + ".inside.board.pose.corner",
                chassis.inside().board().pose());
    }

    /** A place. */
    static Spot in(Chassis chassis, Place place) {
        return new Spot(chassis.id() + ".inside.places." + place.id() + ".pose.corner", place.pose());
    }
}

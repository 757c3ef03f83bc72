package loopwright.catalog.chassis;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pose;

/**
 * A named place for a supply, a drive, a pump or a reservoir. It holds one part.
 *
 * @param holds the forms it takes
 * @param pose the part's corner and the way its length, width and height point
 * @param inside the removable it is in: it goes when that is taken out
 * @param against walls the part may touch
 * @param touches bodies the part may touch
 */
public record Place(
        String id,
        String title,
        List<Holds> holds,
        Pose pose,
        Optional<String> inside,
        List<Face> against,
        List<String> touches,
        Optional<DriveHold> drive) {

    /** A place that says nothing of how a drive is held. */
    public Place(
            String id,
            String title,
            List<Holds> holds,
            Pose pose,
            Optional<String> inside,
            List<Face> against,
            List<String> touches) {
        this(id, title, holds, pose, inside, against, touches, Optional.empty());
    }

    /**
     * How a drive is held.
     *
     * @param from which of its threads the screws go into
     * @param damped whether soft rings keep its hum from the chassis
     */
    public record DriveHold(From from, boolean damped) {
        /** Where its screws go in. */
        public enum From {
            /** At both sides. */
            SIDES,
            /** From below. */
            BELOW
        }
    }

    /** What fits a place. */
    public enum Holds {
        /** Full-size supply. */
        ATX,
        /** Small supply. */
        SFX,
        /** Long small supply. */
        SFX_L,
        /** 2.5-inch drive. */
        D2_5,
        /** 3.5-inch drive. */
        D3_5,
        /** Pump without a reservoir. */
        PUMP,
        /** Pump and reservoir in one. */
        PUMP_RESERVOIR,
        /** Reservoir without a pump. */
        RESERVOIR
    }
}

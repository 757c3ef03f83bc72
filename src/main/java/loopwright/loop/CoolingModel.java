package loopwright.loop;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How warm the coolant gets over the room, and how sure that is.
 *
 * <p>Absent means that nothing conducts: the coolant finds no steady temperature.
 */
public interface CoolingModel {

    /** What a reader is told the figures are, in a few words. */
    String title();

    /** Mean coolant temperature over the room's, K. */
    OptionalDouble coolantOverRoomK(CoolingCase asked);

    /** Band of {@link #coolantOverRoomK}. */
    Optional<Band> coolantOverRoomBand(CoolingCase asked);

    /**
     * Band of a gain: coolant over room before, minus after.
     *
     * <p>Narrower than the two cases' own bands would say, as most of what is not known of a chassis is the same in both.
     */
    Optional<Band> gainBand(CoolingCase before, CoolingCase after);
}

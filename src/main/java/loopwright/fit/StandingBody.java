package loopwright.fit;

import java.util.List;
import loopwright.geometry.SpaceBox;

/**
 * A body where it stands in a witness.
 *
 * @param id {@code kind:name}, as {@code geometry.Body} has it
 * @param boxes in chassis coordinates, hundredths of a millimetre; a box's {@code what} is its name on a screen
 */
public record StandingBody(String id, List<SpaceBox> boxes) {

    /** Copies. */
    public StandingBody {
        boxes = List.copyOf(boxes);
    }
}

package loopwright.fit;

import java.util.Optional;
import loopwright.catalog.basis.Pattern;

/**
 * How far one measure of a layout can grow while everything else stays and the stacks slide to suit.
 *
 * <p>Unit: hundredths of a millimetre.
 *
 * @param at where, for radiators
 * @param nowHmm what it measures in the layout; absent where nothing hangs yet
 * @param mostHmm up to where every size fits; absent where nothing stops it, or where not even the thinnest radiator
 *     goes
 * @param stoppedBy what it meets beyond that, or why nothing goes
 */
public record Growth(
        Measure measure, Optional<At> at, Optional<Integer> nowHmm, Optional<Integer> mostHmm, String stoppedBy) {

    /** What grows. */
    public enum Measure {
        /** The card's length, towards its far end. */
        CARD_LENGTH,
        /** The supply's length, towards its plugs. */
        SUPPLY_LENGTH,
        /** The height of the memory. */
        MEMORY_HEIGHT,
        /** A radiator's thickness, inwards. */
        RADIATOR_THICKNESS
    }

    /**
     * A radiator's place.
     *
     * @param shape what hangs there, or would as thick as it can be; absent where none goes
     */
    public record At(MountFrame frame, Pattern pattern, Optional<Shape> shape) {}

    /** Said where nothing inside the case ends the growth. */
    public static final String NOTHING = "nothing";

    /** Whether the mount has no radiator yet, and none would fit. */
    public boolean isNone() {
        return nowHmm.isEmpty() && mostHmm.isEmpty();
    }
}

package loopwright.plumbing;

import java.util.List;
import java.util.Optional;
import loopwright.plumbing.route.Where;

/**
 * A part of the loop, where it stands.
 *
 * @param name whose it is: {@code pump}, {@code card block}, {@code roof radiator}
 * @param low the corner of its body at the smallest coordinates
 * @param high the corner at the largest
 * @param ports in the order of its file
 */
public record LoopPart(String name, Kind kind, Where low, Where high, List<Port> ports, Holds holds) {

    /** Copies. */
    public LoopPart {
        ports = List.copyOf(ports);
    }

    /** What it is in the loop. */
    public enum Kind {
        /** A reservoir without a pump. */
        RESERVOIR,
        /** A pump without a reservoir. */
        PUMP,
        /** Both in one. */
        PUMP_RESERVOIR,
        /** On a processor or a card. */
        BLOCK,
        /** On a mount. */
        RADIATOR;

        /** Whether coolant is filled in here. */
        public boolean isTank() {
            return this == RESERVOIR || this == PUMP_RESERVOIR;
        }
    }

    /** What it holds, mL, and weighs dry, g, where its file says. */
    public record Holds(double coolantML, Optional<Integer> massG) {}
}

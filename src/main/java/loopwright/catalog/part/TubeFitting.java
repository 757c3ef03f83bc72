package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/**
 * A fitting of the loop.
 *
 * @param tubeBoreMm bore of the tube it takes; left out where it takes none
 * @param tubeOutsideMm outside of the tube it takes; left out where it takes none
 * @param heightMm over the port's face; of an elbow, to the axis of what leaves it
 * @param radiusMm room that it takes round its axis
 * @param wetted what it is made of, where coolant touches it
 */
public record TubeFitting(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Kind kind,
        @Limits(min = 4, max = 25) Optional<Dimension> tubeBoreMm,
        @Limits(min = 6, max = 30) Optional<Dimension> tubeOutsideMm,
        @Limits(min = 2, max = 90) Dimension heightMm,
        @Limits(min = 4, max = 30) Dimension radiusMm,
        Wetted wetted,
        Optional<Integer> massG)
        implements Part {

    /** Whether it holds such a tube: bore and outside are the same, nominally. */
    public boolean takes(Tube tube) {
        return kind == Kind.STRAIGHT && isThat(tubeBoreMm, tube.boreMm()) && isThat(tubeOutsideMm, tube.outsideMm());
    }

    /** Whether it may touch the coolant of a copper loop: not of zinc or aluminium. */
    public boolean isSoundInCopper() {
        return wetted != Wetted.ZINC_PLATED && wetted != Wetted.ALUMINIUM;
    }

    private static boolean isThat(Optional<Dimension> taken, Dimension size) {
        return taken.filter(t -> t.valueHmm() == size.valueHmm()).isPresent();
    }

    /** What it does. */
    public enum Kind {
        /** Holds a tube straight off a port. */
        STRAIGHT,
        /** Turns by 45 degrees between port and straight fitting. */
        ELBOW_45,
        /** Turns by a right angle between port and straight fitting. */
        ELBOW_90,
        /** Closes a port. */
        PLUG,
        /** Drains: a valve with a plug. */
        DRAIN
    }

    /** What it is made of. */
    public enum Wetted {
        /** Brass. */
        BRASS,
        /** Brass, nickel-plated. */
        NICKEL_BRASS,
        /** Anything zinc-plated: the zinc goes into the coolant. */
        ZINC_PLATED,
        /** Aluminium. */
        ALUMINIUM,
        /** Stainless steel. */
        STAINLESS,
        /** Plastic. */
        PLASTIC
    }
}

package loopwright.workshop.fasten;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Screw;

/** A screw from stock, or that there is none. */
public sealed interface LengthChoice {

    /**
     * A length inside the window.
     *
     * @param alsoFit others of the stock that are inside, shortest first
     */
    record Fits(Screw screw, List<Screw> alsoFit) implements LengthChoice {
        /** Copies. */
        public Fits {
            alsoFit = List.copyOf(alsoFit);
        }
    }

    /**
     * No length of the stock is inside.
     *
     * @param shorter the longest that is too short
     * @param longer the shortest that is too long
     * @param padded what fits with washers under the head
     */
    record Refused(Optional<Screw> shorter, Optional<Screw> longer, Optional<Padded> padded) implements LengthChoice {}

    /** A screw with so many washers under its head. */
    record Padded(Screw screw, int washers, int washerHmm) {}
}

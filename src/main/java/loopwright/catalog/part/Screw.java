package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/** A screw by the piece. */
public record Screw(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        ScrewThread thread,
        Head head,
        @Limits(min = 3, max = 80) Dimension lengthMm)
        implements Part {

    /** Head shapes. */
    public enum Head {
        /** Round or pan: length is under the head. */
        PAN,
        /** Countersunk: length is over all. */
        COUNTERSUNK
    }
}

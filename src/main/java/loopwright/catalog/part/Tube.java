package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/** Tube, sold by the metre: {@code buy} is per metre. */
public record Tube(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Kind kind,
        @Limits(min = 4, max = 25) Dimension boreMm,
        @Limits(min = 6, max = 30) Dimension outsideMm,
        @Limits(min = 10, max = 150) Dimension bendRadiusMinMm)
        implements Part {

    /** Whether it bends by hand or over heat. */
    public enum Kind {
        /** Bends by hand. */
        SOFT,
        /** Bent warm, or run straight into elbows. */
        RIGID
    }
}

package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.quantity.Dimension;

/** A coolant reservoir; fittings need {@code portRoomMm} beyond the far end of its length. */
public record Reservoir(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        SizeMm body,
        @Limits(min = 20, max = 5000) double coolantML,
        Dimension portRoomMm)
        implements Part {}

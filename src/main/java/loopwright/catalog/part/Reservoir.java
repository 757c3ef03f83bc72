package loopwright.catalog.part;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.PartPort;
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
        Dimension portRoomMm,
        List<PartPort> ports,
        Optional<PartPort> fill,
        Optional<Integer> massG)
        implements Part {

    /** A reservoir that says nothing of its ports and mass. */
    public Reservoir(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            SizeMm body,
            double coolantML,
            Dimension portRoomMm) {
        this(id, title, variantOf, buy, body, coolantML, portRoomMm, List.of(), Optional.empty(), Optional.empty());
    }
}

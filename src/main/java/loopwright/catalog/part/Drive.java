package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.quantity.Dimension;

/** A drive; its plugs need room beyond the far end of its length. Drives in a board socket take no place. */
public record Drive(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        DriveForm form,
        SizeMm body,
        Dimension plugRoomMm,
        double heatW)
        implements Part {

    /** Forms with a published body. */
    public enum DriveForm {
        /** 69.85 × 100.2 mm. */
        D2_5,
        /** 101.6 × 147 mm. */
        D3_5,
        /** On the board. */
        M2
    }
}

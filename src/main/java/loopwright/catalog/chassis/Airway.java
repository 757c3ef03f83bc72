package loopwright.catalog.chassis;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.quantity.Dimension;

/**
 * What a mod changes for the air at a mount. Absent fields change nothing.
 *
 * @param cut the shape of the opening that is cut
 * @param cutMm ring diameter, or width of the strip between the screw rows
 * @param freeArea open share of what closes the opening afterwards (mesh, insert); 1 when nothing does
 * @param filterFreeArea open share of the filter afterwards; 1 when it is taken out
 * @param addedDepthMm free depth gained outside
 * @param grille what lies over the opening, under the screw heads
 */
public record Airway(
        String mount,
        Optional<Cut> cut,
        @Limits(min = 20, max = 400) Optional<Dimension> cutMm,
        @Limits(min = 0, max = 1) Optional<Double> freeArea,
        @Limits(min = 0.05, max = 1) Optional<Double> filterFreeArea,
        @Limits(min = 0, max = 100) Optional<Dimension> addedDepthMm,
        Optional<String> grille) {

    /** An airway without a grille of the catalogue. */
    public Airway(
            String mount,
            Optional<Cut> cut,
            Optional<Dimension> cutMm,
            Optional<Double> freeArea,
            Optional<Double> filterFreeArea,
            Optional<Dimension> addedDepthMm) {
        this(mount, cut, cutMm, freeArea, filterFreeArea, addedDepthMm, Optional.empty());
    }

    /** Shapes of cut. */
    public enum Cut {
        /** One round hole a fan: the web between them stays. */
        RINGS,
        /** One strip between the two rows of screws. */
        STRIP,
        /** Everything in front of the fans; something else is the seat. */
        FULL
    }
}

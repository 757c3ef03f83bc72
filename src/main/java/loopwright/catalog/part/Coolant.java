package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;

/**
 * Coolant, sold by the litre: {@code buy} is per litre.
 *
 * <p>A sheet's "40 %" may be by mass or by volume: the file says which, in one of two fields.
 *
 * @param glycolMassPercent share of the mass that is glycol
 * @param glycolVolumePercent share of the volume that was glycol before it was mixed
 */
public record Coolant(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        BaseLiquid base,
        @Limits(min = 0, max = 60) Optional<Double> glycolMassPercent,
        @Limits(min = 0, max = 60) Optional<Double> glycolVolumePercent,
        boolean inhibited,
        @Limits(min = 1, max = 60) int changeMonths)
        implements Part {

    /** What the water is mixed with. */
    public enum BaseLiquid {
        /** Nothing but inhibitor. */
        WATER,
        /** Propylene glycol. */
        PROPYLENE_GLYCOL,
        /** Ethylene glycol: poisonous. */
        ETHYLENE_GLYCOL
    }
}

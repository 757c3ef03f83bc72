package loopwright.catalog.part;

import java.util.List;
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
 * @param additives left out: not known
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
        @Limits(min = 1, max = 60) int changeMonths,
        Optional<Additives> additives)
        implements Part {

    /** A coolant that says nothing of what else is in it. */
    public Coolant(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            BaseLiquid base,
            Optional<Double> glycolMassPercent,
            Optional<Double> glycolVolumePercent,
            boolean inhibited,
            int changeMonths) {
        this(
                id,
                title,
                variantOf,
                buy,
                base,
                glycolMassPercent,
                glycolVolumePercent,
                inhibited,
                changeMonths,
                Optional.empty());
    }

    /**
     * What else is in it.
     *
     * @param biocides none: nothing in it keeps growth down
     * @param attacks seals that swell or crack in it
     */
    public record Additives(List<Biocide> biocides, Tint tint, List<Seal> attacks) {}

    /** What keeps growth down. */
    public enum Biocide {
        /** A copper salt. */
        COPPER_SALT,
        /** Silver, as a strip in the tank or dissolved. */
        SILVER,
        /** An organic biocide. */
        ORGANIC
    }

    /** What colours it. */
    public enum Tint {
        /** Nothing. */
        CLEAR,
        /** A dye, dissolved. */
        DYED,
        /** Particles that make it opaque. */
        PIGMENTED,
        /** Flakes that are seen to swirl. */
        GLITTER
    }

    /** What rings and hoses are made of. */
    public enum Seal {
        /** Ethylene-propylene rubber, ISO 1629: the usual one of loops. */
        EPDM,
        /** Nitrile rubber. */
        NITRILE,
        /** Silicone rubber. */
        SILICONE,
        /** Fluorine rubber. */
        FLUORO
    }

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

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
        @Limits(min = 10, max = 150) Dimension bendRadiusMinMm,
        Optional<Material> material)
        implements Part {

    /** A tube that does not say what it is made of. */
    public Tube(
            String id,
            String title,
            Optional<String> variantOf,
            Purchase buy,
            Kind kind,
            Dimension boreMm,
            Dimension outsideMm,
            Dimension bendRadiusMinMm) {
        this(id, title, variantOf, buy, kind, boreMm, outsideMm, bendRadiusMinMm, Optional.empty());
    }

    /** What it is made of. */
    public enum Material {
        /** Soft, clear: PVC with plasticiser. */
        CLEAR_PVC,
        /** Soft, black: ethylene-propylene rubber. */
        EPDM,
        /** Rigid, clear: PETG. */
        PETG,
        /** Rigid, clear: acrylic. */
        ACRYLIC,
        /** Rigid: glass. */
        GLASS,
        /** Rigid: copper. */
        COPPER
    }

    /** Whether it bends by hand or over heat. */
    public enum Kind {
        /** Bends by hand. */
        SOFT,
        /** Bent warm, or run straight into elbows. */
        RIGID
    }
}

package loopwright.catalog.chassis;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Span;
import loopwright.quantity.Dimension;

/** A face of the chassis as a sheet with a past: its flat part, and what is in it already. */
public record Panel(
        String id,
        Face face,
        @Limits(min = 0.4, max = 8) Dimension thicknessMm,
        Material material,
        Patch flat,
        Features features,
        Optional<Coat> coat) {

    /** A panel that says nothing of its coat. */
    public Panel(String id, Face face, Dimension thicknessMm, Material material, Patch flat, Features features) {
        this(id, face, thicknessMm, material, flat, features, Optional.empty());
    }

    /** What it is coated with as delivered. */
    public enum Coat {
        /** Nothing. */
        BARE,
        /** Paint or powder. */
        PAINTED,
        /** A soft, rubbery coat that no paint holds on. */
        SOFT_TOUCH
    }

    /** What it is made of. */
    public enum Material {
        /** Folded steel sheet. */
        STEEL,
        /** Aluminium sheet. */
        ALUMINIUM,
        /** Moulded plastic. */
        PLASTIC,
        /** Acrylic sheet. */
        ACRYLIC,
        /** Tempered glass: never cut, never drilled. */
        GLASS
    }

    /** A rectangle in the panel's plane: the two spans along the axes that are not its normal. */
    public record Patch(Optional<Span> xMm, Optional<Span> yMm, Optional<Span> zMm) {
        /** The span along an axis of the plane. */
        public Optional<Span> along(Axis axis) {
            return switch (axis) {
                case X -> xMm;
                case Y -> yMm;
                case Z -> zMm;
            };
        }
    }

    /** What a new hole or cut has to keep clear of. */
    public record Features(List<Feature> slots, List<Feature> perforated, List<Feature> folds, List<Feature> clips) {}

    /** One slot, perforated area, fold or clip. */
    public record Feature(String id, Patch at) {}
}

package loopwright.catalog.part;

import java.util.Optional;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Purchase;
import loopwright.quantity.Dimension;

/**
 * A raised cover: a lid on the outside of a panel that makes a cavity.
 *
 * <p>Length runs along the mount, width across it; the cavity is the outline less the wall on every side.
 */
public record Cover(
        String id,
        String title,
        Optional<String> variantOf,
        Purchase buy,
        Body body,
        Skin skin,
        Fixing fixing,
        Optional<Integer> massG)
        implements Part {

    /** A cover that says nothing of its mass. */
    public Cover(
            String id, String title, Optional<String> variantOf, Purchase buy, Body body, Skin skin, Fixing fixing) {
        this(id, title, variantOf, buy, body, skin, fixing, Optional.empty());
    }

    /** Outline, wall, and free height under the skin. */
    public record Body(
            Dimension lengthMm,
            Dimension widthMm,
            @Limits(min = 0.5, max = 15) Dimension wallMm,
            Dimension insideHeightMm,
            @Limits(min = 0.5, max = 10) Dimension skinMm) {}

    /**
     * How air leaves it.
     *
     * @param freeArea share of the fan area that is open above the fans; 0 for a solid skin
     * @param sideSlotAreaCm2 open area of the side slots, all round
     */
    public record Skin(
            @Limits(min = 0, max = 1) double freeArea,
            @Limits(min = 0, max = 2000) double sideSlotAreaCm2) {}

    /** The screws that hold it to the panel. */
    public record Fixing(@Limits(min = 2, max = 24) int screws, ScrewThread thread) {}
}

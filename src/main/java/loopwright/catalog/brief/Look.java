package loopwright.catalog.brief;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Limits;

/**
 * The colours that a client agreed to, and which of them are meant to match.
 *
 * @param colours named ones
 * @param matches pairs
 */
public record Look(List<Colour> colours, List<Match> matches) {

    /** Copies. */
    public Look {
        colours = List.copyOf(colours);
        matches = List.copyOf(matches);
    }

    /**
     * A colour.
     *
     * @param on what has it
     * @param lab what an instrument read on a card, or what a maker gives
     * @param dropsPerL of dye in the coolant, for coolant that is dyed here
     */
    public record Colour(
            String id,
            String title,
            On on,
            Lab lab,
            Gloss gloss,
            @Limits(min = 0.1, max = 500) Optional<Double> dropsPerL) {}

    /** What has a colour. */
    public enum On {
        /** Panels, covers and inserts. */
        PAINT,
        /** Sleeves of cables. */
        CORD,
        /** The coolant. */
        COOLANT,
        /** Grilles and meshes. */
        GRILLE,
        /** Tubes. */
        TUBE,
        /** Anything else. */
        OTHER
    }

    /**
     * A colour by CIE 1976 L*a*b*, which has no units (ISO/CIE 11664-4).
     *
     * @param lightness L*, black 0, white 100
     * @param greenRed a*, green negative, red positive
     * @param blueYellow b*, blue negative, yellow positive
     */
    public record Lab(
            @Limits(min = 0, max = 100) double lightness,
            @Limits(min = -150, max = 150) double greenRed,
            @Limits(min = -150, max = 150) double blueYellow) {}

    /** How it shines. */
    public enum Gloss {
        /** No shine. */
        MATTE,
        /** A little. */
        SATIN,
        /** Mirrors. */
        GLOSS,
        /** A liquid or a clear part: light goes through. */
        CLEAR
    }

    /** Two colours that are meant to look the same. */
    public record Match(String one, String other) {}
}

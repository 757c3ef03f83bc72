package loopwright.catalog.chassis;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Limits;
import loopwright.quantity.Dimension;

/**
 * The outside and the sheets.
 *
 * @param interior free inside; the frame's origin is its front lower left corner
 * @param volumeL outside volume
 * @param leakCm2 seams, card slots and other gaps that air passes; left out, the workshop's usual figure
 * @param comesOff faces whose panel comes off for work; left out, the two sides
 */
public record Shell(
        Interior interior,
        @Limits(min = 1, max = 120) double volumeL,
        @Limits(min = 0.3, max = 40) double massKg,
        List<Panel> panels,
        @Limits(min = 0, max = 500) Optional<Double> leakCm2,
        List<Face> comesOff) {

    /** A shell whose sides come off. */
    public Shell(Interior interior, double volumeL, double massKg, List<Panel> panels, Optional<Double> leakCm2) {
        this(interior, volumeL, massKg, panels, leakCm2, List.of());
    }

    /** Faces that are open while somebody works inside. */
    public Set<Face> openFaces() {
        return comesOff.isEmpty() ? EnumSet.of(Face.LEFT, Face.RIGHT) : EnumSet.copyOf(comesOff);
    }

    /** Free inside: x is width, y depth, z height. */
    public record Interior(
            @Limits(min = 50, max = 800) Dimension widthMm,
            @Limits(min = 50, max = 800) Dimension depthMm,
            @Limits(min = 50, max = 900) Dimension heightMm) {}
}

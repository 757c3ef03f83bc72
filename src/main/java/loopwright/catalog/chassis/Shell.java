package loopwright.catalog.chassis;

import java.util.List;
import loopwright.catalog.basis.Limits;
import loopwright.quantity.Dimension;

/**
 * The outside and the sheets.
 *
 * @param interior free inside; the frame's origin is its front lower left corner
 * @param volumeL outside volume
 */
public record Shell(
        Interior interior,
        @Limits(min = 1, max = 120) double volumeL,
        @Limits(min = 0.3, max = 40) double massKg,
        List<Panel> panels) {

    /** Free inside: x is width, y depth, z height. */
    public record Interior(
            @Limits(min = 50, max = 800) Dimension widthMm,
            @Limits(min = 50, max = 800) Dimension depthMm,
            @Limits(min = 50, max = 900) Dimension heightMm) {}
}

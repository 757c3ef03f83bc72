package loopwright.catalog.chassis;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.basis.Span;
import loopwright.quantity.Dimension;

/**
 * A place on a panel where fans or a radiator can hang.
 *
 * @param lengthwise the axis along which fans follow each other
 * @param insetMm how far inside the panel's wall the seat plane lies (0: on the sheet)
 * @param seats the patterns it takes as delivered, and where
 * @param gasket a strip between sheet and stack, where there is one
 * @param touches bodies its stacks may touch
 */
public record Mount(
        String id,
        String panel,
        Axis lengthwise,
        @Limits(min = 0, max = 100) Dimension insetMm,
        List<Seat> seats,
        Opening opening,
        Optional<Gasket> gasket,
        List<String> touches) {

    /**
     * A pattern and the positions its centre may take: each union of spans in chassis coordinates.
     *
     * @param lengthwiseMm positions of the pattern's centre along the mount
     * @param sidewaysMm positions of the pattern's centre across it
     */
    public record Seat(Pattern pattern, List<Span> lengthwiseMm, List<Span> sidewaysMm) {}

    /**
     * How air gets through the panel as delivered.
     *
     * @param freeArea share of the fan area that is open
     * @param filterFreeArea the same of a filter in front, where there is one
     * @param outsideDepthMm free depth outside the panel (feet, trim, wall)
     * @param maskedShare share of a radiator's core that a frame or a fold covers; left out, none
     */
    public record Opening(
            @Limits(min = 0, max = 1) double freeArea,
            Where where,
            @Limits(min = 0.05, max = 1) Optional<Double> filterFreeArea,
            @Limits(min = 0, max = 500) Dimension outsideDepthMm,
            @Limits(min = 0, max = 0.9) Optional<Double> maskedShare) {}

    /** Where the open area lies. */
    public enum Where {
        /** In front of the fans. */
        FACE,
        /** Round the edges of a closed face. */
        EDGES
    }

    /** A soft strip: thickness free and squeezed. */
    public record Gasket(Dimension freeMm, Dimension squeezedMm) {}
}

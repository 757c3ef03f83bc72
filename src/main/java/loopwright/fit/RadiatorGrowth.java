package loopwright.fit;

import java.util.Set;
import loopwright.quantity.Dimension;

/** Stacks whose radiator grows thicker: what lies further in moves with it. Unit: hundredths of a millimetre. */
final class RadiatorGrowth {

    private final FitCase fitCase;

    RadiatorGrowth(FitCase fitCase) {
        this.fitCase = fitCase;
    }

    /** A shape on a mount, by how much thicker its radiator is. */
    Growing of(MountFrame frame, Shape shape, ModSet mods) {
        return Growing.stack(
                e -> Occupant.of(
                        new StackBodies(
                                        frame,
                                        grown(shape, e),
                                        fitCase.catalog().practice())
                                .body(),
                        Occupant.Group.STACK,
                        Set.of(frame.panel().face()),
                        Set.copyOf(frame.mount().touches())),
                new Growing.Hanging(fitCase.seating(), frame, e -> grown(shape, e), mods));
    }

    /** The same shape with a radiator that much thicker. */
    static Shape grown(Shape shape, int growthHmm) {
        RadiatorOutline outline = thick(shape.outline(), shape.thicknessHmm() + growthHmm);
        return new Shape(outline, shape.fanThickness(), shape.arrangement(), shape.portEnd());
    }

    /** The same outline with another thickness. */
    static RadiatorOutline thick(RadiatorOutline outline, int thicknessHmm) {
        Dimension was = outline.thickness();
        return new RadiatorOutline(
                outline.pattern(),
                outline.width(),
                new Dimension(thicknessHmm, was.plusMinusHmm(), was.known()),
                outline.portOverhang(),
                outline.blankOverhang(),
                outline.ports());
    }
}

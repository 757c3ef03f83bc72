package loopwright.workshop.finish;

import java.util.List;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Minutes;
import loopwright.catalog.standard.Finishing.PaintSystem;
import loopwright.catalog.standard.Finishing.Surface;

/**
 * How parts of one surface are painted.
 *
 * @param parts that go through it together
 * @param waitLowMin minutes in which nothing is done, the shortest waits; cure not included
 * @param waitHighMin the longest
 */
public record PaintPlan(PaintSystem system, List<PaintedPart> parts, int waitLowMin, int waitHighMin) {

    /** Copies. */
    public PaintPlan {
        parts = List.copyOf(parts);
    }

    /** The system of a surface. */
    static PaintSystem system(Finishing practice, Surface surface) {
        return practice.systems().stream()
                .filter(s -> s.surface() == surface)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no paint system for " + surface));
    }

    static PaintPlan of(PaintSystem system, List<PaintedPart> parts) {
        return new PaintPlan(
                system,
                parts,
                CoatPlan.of(system, Minutes::lowMin).waitMin(),
                CoatPlan.of(system, Minutes::highMin).waitMin());
    }
}

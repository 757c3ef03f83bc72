package loopwright.catalog.chassis;

import java.util.List;
import loopwright.catalog.basis.Limits;
import loopwright.catalog.basis.Point;

/** What the machine stands on, and what it is lifted by. */
public record Standing(List<Foot> feet, List<Lift> lifts) {

    /** A foot: where it touches the desk. */
    public record Foot(String id, Point at) {}

    /**
     * A handle or another lifting point.
     *
     * @param carriesKg what it is made for
     */
    public record Lift(
            String id,
            String title,
            Point at,
            @Limits(min = 0.5, max = 200) double carriesKg) {}
}

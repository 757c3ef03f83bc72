package loopwright.power.cable;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.geometry.SpaceBox;

/**
 * A box that cables go round, or through its holes.
 *
 * @param body what it belongs to
 * @param holes those that go through it, along its thinnest axis
 */
public record Obstacle(String body, SpaceBox box, List<Hole> holes) {

    /** Copies. */
    public Obstacle {
        holes = List.copyOf(holes);
    }

    /** A box without holes. */
    public Obstacle(String body, SpaceBox box) {
        this(body, box, List.of());
    }

    /** The axis along which it is thinnest: that is how its holes go. */
    public Axis thinnest() {
        Axis best = Axis.X;
        for (Axis axis : Axis.values()) {
            if (thickness(axis) < thickness(best)) {
                best = axis;
            }
        }
        return best;
    }

    private int thickness(Axis axis) {
        return box.along(axis).to() - box.along(axis).from();
    }

    /** Whether a point is nearer to it than a distance along every axis: on that border it is not. */
    public boolean isNear(PointHmm point, int hmm) {
        for (Axis axis : Axis.values()) {
            SpaceBox.Reach reach = box.along(axis);
            if (point.along(axis) <= reach.from() - hmm || point.along(axis) >= reach.to() + hmm) {
                return false;
            }
        }
        return true;
    }
}

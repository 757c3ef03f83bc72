package loopwright.paper.book;

import java.util.Comparator;
import loopwright.catalog.basis.Axis;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;

/** From where a chassis is looked at: which axes lie on the paper, and what is in front of what. */
enum View {
    /** From the front: x to the right, z up. */
    FRONT("from the front", Axis.X, Axis.Z, Axis.Y, false),
    /** From the right: y (towards the rear) to the right, z up. */
    SIDE("from the right", Axis.Y, Axis.Z, Axis.X, true),
    /** From above: x to the right, the rear up. */
    TOP("from above", Axis.X, Axis.Y, Axis.Z, true);

    private final String words;
    private final Axis across;
    private final Axis up;
    private final Axis depth;
    private final boolean highIsNear;

    View(String words, Axis across, Axis up, Axis depth, boolean highIsNear) {
        this.words = words;
        this.across = across;
        this.up = up;
        this.depth = depth;
        this.highIsNear = highIsNear;
    }

    String words() {
        return words;
    }

    Axis across() {
        return across;
    }

    Axis up() {
        return up;
    }

    boolean shows(Axis axis) {
        return axis == across || axis == up;
    }

    /** What is far comes first, so that what is near is drawn over it. */
    Comparator<SpaceBox> farFirst() {
        return Comparator.comparingInt(box -> {
            Reach reach = box.along(depth);
            return highIsNear ? reach.to() : -reach.from();
        });
    }
}

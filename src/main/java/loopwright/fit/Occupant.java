package loopwright.fit;

import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;
import loopwright.geometry.Body;
import loopwright.geometry.SpaceBox;

/**
 * A body with what it may touch.
 *
 * @param against walls it may touch
 * @param touches ids of built-in bodies it may touch
 * @param unknowns dimensions that are not known, of its boxes or of the positions it may take
 */
record Occupant(
        Body body, Group group, Set<Face> against, Set<String> touches, List<SpaceBox> boxes, List<String> unknowns) {

    /** What belongs together: bodies of the first two groups are not pairs among themselves. */
    enum Group {
        /** Obstructions, removables, what mods add. */
        BUILT_IN,
        /** The board and what is plugged into it. */
        ON_BOARD,
        /** Supply, drives, pump, reservoir. */
        IN_PLACE,
        /** A stack on a mount. */
        STACK
    }

    static Occupant of(Body body, Group group, Set<Face> against, Set<String> touches) {
        return new Occupant(
                body,
                group,
                Set.copyOf(against),
                Set.copyOf(touches),
                body.boxes().stream().map(SpaceBox::of).toList(),
                body.unknowns());
    }

    Occupant withUnknowns(List<String> more) {
        return new Occupant(body, group, against, touches, boxes, more);
    }

    /** The id that {@code touches} lists name it by. */
    String name() {
        return body.id().substring(body.id().indexOf(':') + 1);
    }

    boolean isUnknown() {
        return !unknowns.isEmpty();
    }

    /** Whether the two are a pair at all. */
    boolean pairsWith(Occupant other) {
        if (group == other.group && (group == Group.BUILT_IN || group == Group.ON_BOARD)) {
            return false;
        }
        boolean thisTouches = other.group == Group.BUILT_IN && touches.contains(other.name());
        boolean otherTouches = group == Group.BUILT_IN && other.touches.contains(name());
        return !thisTouches && !otherTouches;
    }

    /** Whether the distance to a wall counts. */
    boolean pairsWith(Face wall) {
        return group != Group.BUILT_IN && !against.contains(wall);
    }
}

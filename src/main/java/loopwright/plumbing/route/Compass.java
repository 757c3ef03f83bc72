package loopwright.plumbing.route;

import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;

/** Numbers of axes and headings, and the heading that points the other way. */
public final class Compass {

    private Compass() {}

    /** 0 to 2. */
    static int number(Axis axis) {
        return switch (axis) {
            case X -> 0;
            case Y -> 1;
            case Z -> 2;
        };
    }

    /** 0 to 5. */
    static int number(Heading heading) {
        return 2 * number(heading.axis()) + (heading.sign() > 0 ? 1 : 0);
    }

    /** The other way. */
    public static Heading against(Heading heading) {
        return switch (heading) {
            case LEFT -> Heading.RIGHT;
            case RIGHT -> Heading.LEFT;
            case FRONT -> Heading.REAR;
            case REAR -> Heading.FRONT;
            case DOWN -> Heading.UP;
            case UP -> Heading.DOWN;
        };
    }
}

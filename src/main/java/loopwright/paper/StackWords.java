package loopwright.paper;

import java.util.Locale;
import loopwright.catalog.basis.Axis;
import loopwright.fit.Layout.Stack;
import loopwright.fit.MountFrame;
import loopwright.fit.PortEnd;

/** A stack in the builder's words. */
final class StackWords {

    private StackWords() {}

    /** {@code roof 2x120x30, 25 mm fans in cover, ports rear}. */
    static String full(Stack stack) {
        return brief(stack) + ", " + fans(stack) + ", ports " + portEnd(stack);
    }

    /** {@code roof 2x120x30}: mount, pattern and radiator thickness. */
    static String brief(Stack stack) {
        return stack.frame().mount().id() + " " + size(stack);
    }

    /** {@code 2x120x30}. */
    static String size(Stack stack) {
        return stack.shape().pattern() + "x" + Mm.text(stack.shape().thicknessHmm());
    }

    /** The side of the chassis that a mount is on. */
    static String face(Stack stack) {
        return stack.frame().panel().face().name().toLowerCase(Locale.ROOT);
    }

    private static String fans(Stack stack) {
        String fans = Mm.text(stack.shape().fanThickness().valueHmm()) + " mm fans ";
        return switch (stack.shape().arrangement()) {
            case PUSH -> fans + side(stack, false);
            case PULL -> fans + side(stack, true);
            case PUSH_PULL -> fans + "on both sides";
            case COVER_PUSH -> fans + "in cover";
            case COVER_PUSH_PULL -> fans + "in cover and " + side(stack, true);
            case FANS_ONLY -> fans + "and no radiator";
            case COVER_RADIATOR -> "radiator in cover, " + fans + "inside";
        };
    }

    /** Which side of the radiator the fans are on. */
    private static String side(Stack stack, boolean inner) {
        return switch (stack.frame().panel().face()) {
            case ROOF -> inner ? "below it" : "above it";
            case FLOOR -> inner ? "above it" : "below it";
            case FRONT -> inner ? "behind it" : "in front of it";
            case REAR -> inner ? "in front of it" : "behind it";
            case LEFT -> inner ? "right of it" : "left of it";
            case RIGHT -> inner ? "left of it" : "right of it";
        };
    }

    /** The end of the mount that the ports are at: front, rear, top, bottom, left or right. */
    static String portEnd(Stack stack) {
        boolean low = stack.shape().portEnd() == PortEnd.LOW;
        return switch (stack.frame().lengthwise()) {
            case X -> low ? "left" : "right";
            case Y -> low ? "front" : "rear";
            case Z -> low ? "bottom" : "top";
        };
    }

    /** What a coordinate is measured from: the inside of that wall. */
    static String datum(Axis axis) {
        return switch (axis) {
            case X -> "from left";
            case Y -> "from front";
            case Z -> "over floor";
        };
    }

    static String alongDatum(MountFrame frame) {
        return datum(frame.lengthwise());
    }

    static String asideDatum(MountFrame frame) {
        return datum(frame.sideways());
    }
}

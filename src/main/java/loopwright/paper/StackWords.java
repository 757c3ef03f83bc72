package loopwright.paper;

import java.util.Locale;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.fit.Layout.Stack;
import loopwright.fit.MountFrame;
import loopwright.fit.PortEnd;
import loopwright.fit.Witness;

/** A stack in the builder's words. */
final class StackWords {

    private StackWords() {}

    /** {@code roof 2x120x30, fans 25 in cover, ports rear}. */
    static String full(Stack stack) {
        return brief(stack) + ", fans " + fans(stack) + ", ports " + portEnd(stack);
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

    /** {@code 15 above}: thickness of the fans, and on which side of the radiator they are. */
    static String fans(Stack stack) {
        String fans = Mm.text(stack.shape().fanThickness().valueHmm()) + " ";
        String outer = side(stack.frame().panel().face());
        String inner = side(opposite(stack.frame().panel().face()));
        return switch (stack.shape().arrangement()) {
            case PUSH -> fans + outer;
            case PULL -> fans + inner;
            case PUSH_PULL -> fans + outer + " and " + inner;
            case COVER_PUSH -> fans + "in cover";
            case COVER_PUSH_PULL -> fans + "in cover and " + inner;
            case COVER_RADIATOR -> fans + inner + ", radiator in cover";
            case FANS_ONLY -> fans + "without radiator";
        };
    }

    private static Face opposite(Face face) {
        return switch (face) {
            case ROOF -> Face.FLOOR;
            case FLOOR -> Face.ROOF;
            case FRONT -> Face.REAR;
            case REAR -> Face.FRONT;
            case LEFT -> Face.RIGHT;
            case RIGHT -> Face.LEFT;
        };
    }

    /** Where something is that lies on that side of the radiator. */
    private static String side(Face face) {
        return switch (face) {
            case ROOF -> "above";
            case FLOOR -> "below";
            case FRONT -> "in front";
            case REAR -> "behind";
            case LEFT -> "left";
            case RIGHT -> "right";
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

    /** Where the pattern's centre may sit: {@code 154-166 from front, 65-78 from left}. */
    static String sits(Witness.At at) {
        MountFrame frame = at.stack().frame();
        return Mm.text(at.alongSlide()) + " " + datum(frame.lengthwise()) + ", " + Mm.text(at.asideSlide()) + " "
                + datum(frame.sideways());
    }

    /** Where it sits with the most room: {@code 160 / 71.5}. */
    static String best(Witness.At at) {
        return Mm.text(at.alongHmm()) + " / " + Mm.text(at.asideHmm());
    }
}

package loopwright.plumbing;

import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.PartFace;
import loopwright.catalog.basis.PartPort;
import loopwright.plumbing.route.Compass;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Where;

/**
 * A part's own frame in the chassis: its box, and the way its length, width and height point.
 *
 * <p>A part's own origin is the corner of its box that all three point away from.
 */
record PartFrame(Solid box, Heading length, Heading width, Heading height) {

    /** A point of the part in chassis coordinates. */
    Where at(int lengthHmm, int widthHmm, int heightHmm) {
        return corner().towards(length, lengthHmm).towards(width, widthHmm).towards(height, heightHmm);
    }

    private Where corner() {
        Where out = box.low();
        for (Heading heading : new Heading[] {length, width, height}) {
            if (heading.sign() < 0) {
                out = out.with(heading.axis(), box.high().along(heading.axis()));
            }
        }
        return out;
    }

    /** A port that the part's file gives. */
    Port port(String part, PartPort port) {
        return new Port(
                part,
                port.id(),
                at(
                        port.alongMm().valueHmm(),
                        port.acrossMm().valueHmm(),
                        port.overMm().valueHmm()),
                heading(port.looks()),
                port.way(),
                false);
    }

    /** The way a face looks. */
    Heading heading(PartFace face) {
        return switch (face) {
            case LENGTH_HIGH -> length;
            case LENGTH_LOW -> Compass.against(length);
            case WIDTH_HIGH -> width;
            case WIDTH_LOW -> Compass.against(width);
            case HEIGHT_HIGH -> height;
            case HEIGHT_LOW -> Compass.against(height);
        };
    }

    /** The part's size along its own length, width or height. */
    int size(Heading own) {
        Axis axis = own.axis();
        return box.high().along(axis) - box.low().along(axis);
    }
}

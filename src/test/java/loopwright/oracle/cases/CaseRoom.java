package loopwright.oracle.cases;

import static loopwright.oracle.cases.Dice.hmm;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Point;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.basis.Span;

/** The stack zone of a case in hundredths: its size, and thin things on the walls that stacks are pushed against. */
record CaseRoom(int zoneXHmm, int depthHmm, int heightHmm, Dice dice) {

    /** A plate on a wall, as thick as said, reaching over the first layers of a mount. */
    Box plate(Face pin, Face face, int reachHmm, int thicknessHmm) {
        Span[] spans = new Span[3];
        for (Axis axis : Axis.values()) {
            int full = full(axis);
            if (axis == pin.normal()) {
                spans[index(axis)] = pin.isHigh() ? span(full - thicknessHmm, full) : span(0, thicknessHmm);
            } else if (axis == face.normal()) {
                spans[index(axis)] = face.isHigh() ? span(full - reachHmm, full) : span(0, reachHmm);
            } else {
                spans[index(axis)] = span(0, full);
            }
        }
        return new Box(spans[0], spans[1], spans[2]);
    }

    /** A small shelf facing the middle of a stack, at a distance from its panel. */
    Box shelf(CaseMount mount, int distanceHmm) {
        Span[] spans = new Span[3];
        for (Axis axis : Axis.values()) {
            int full = full(axis);
            if (axis == mount.face.normal()) {
                spans[index(axis)] = mount.face.isHigh()
                        ? span(full - distanceHmm - 100, full - distanceHmm)
                        : span(distanceHmm, distanceHmm + 100);
            } else {
                int centre = axis == mount.lengthwise ? mount.centreUHmm : mount.centreVHmm;
                spans[index(axis)] = span(centre - 400, centre + 400);
            }
        }
        return new Box(spans[0], spans[1], spans[2]);
    }

    /** A pose whose part sticks out of a wall by a little, in front of a mount's panel. */
    Pose through(Face pin, Face face, int stickOutHmm) {
        int[] corner = {100 + dice.gapHmm(), 200 + dice.gapHmm(), 200 + dice.gapHmm()};
        Face beside = face.normal() == Axis.X ? Face.ROOF : face;
        corner[index(beside.normal())] =
                beside.isHigh() ? full(beside.normal()) - 200 - dice.gapHmm() : 200 + dice.gapHmm();
        corner[index(pin.normal())] = pin.isHigh() ? full(pin.normal()) - stickOutHmm : stickOutHmm;
        return new Pose(
                point(corner[0], corner[1], corner[2]),
                Heading.RIGHT,
                heading(pin.normal(), pin.isHigh()),
                heading(beside.normal(), !beside.isHigh()));
    }

    private static Heading heading(Axis axis, boolean up) {
        return List.of(Heading.values()).stream()
                .filter(h -> h.axis() == axis && (h.sign() > 0) == up)
                .findFirst()
                .orElseThrow();
    }

    private static int index(Axis axis) {
        return switch (axis) {
            case X -> 0;
            case Y -> 1;
            case Z -> 2;
        };
    }

    int full(Axis axis) {
        return switch (axis) {
            case X -> zoneXHmm;
            case Y -> depthHmm;
            case Z -> heightHmm;
        };
    }

    private Span span(int from, int to) {
        return new Span(hmm(from), dice.dim(to, "box-" + dice.between(0, 5)));
    }

    static Point point(int x, int y, int z) {
        return new Point(hmm(x), hmm(y), hmm(z));
    }
}

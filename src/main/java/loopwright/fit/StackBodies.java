package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.part.Radiator;
import loopwright.catalog.part.Radiator.PortFace;
import loopwright.catalog.standard.Practice;
import loopwright.geometry.Body;
import loopwright.geometry.BodyBox;
import loopwright.geometry.BodyBox.Fill;
import loopwright.geometry.Edges;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;

/**
 * The boxes of a stack on a mount, relative to its position along and across the mount.
 *
 * <p>Unit: hundredths of a millimetre. What is in a raised cover makes no box inside.
 */
final class StackBodies {

    private final MountFrame frame;
    private final Practice.Room room;

    StackBodies(MountFrame frame, Practice practice) {
        this.frame = frame;
        this.room = practice.room();
    }

    Body body(Shape shape) {
        List<BodyBox> boxes = new ArrayList<>();
        Sum depth = frame.mount()
                .gasket()
                .map(g -> Sum.ZERO.plus(frame.mount().id() + ".gasket", g.squeezedMm()))
                .orElse(Sum.ZERO);
        for (Arrangement.Layer layer : shape.arrangement().inside()) {
            Sum near = depth;
            if (layer == Arrangement.Layer.FANS) {
                depth = depth.plus("fan.thickness", shape.fanThickness());
                boxes.add(fans(shape, near, depth));
            } else {
                depth = depth.plus(name(shape, "thickness"), shape.outline().thickness());
                boxes.add(radiator(shape, near, depth));
                addPorts(boxes, shape, near, depth);
            }
        }
        if (shape.arrangement().inCover().contains(Arrangement.Layer.RADIATOR)) {
            addPortsThroughPanel(boxes, shape);
        }
        return new Body("stack:" + frame.mount().id(), title(shape), boxes);
    }

    private String title(Shape shape) {
        return frame.mount().id() + " " + shape.pattern();
    }

    private static String name(Shape shape, String dimension) {
        return "radiator." + shape.pattern() + "." + dimension;
    }

    private BodyBox fans(Shape shape, Sum near, Sum far) {
        Pattern pattern = shape.pattern();
        Dimension across = exact(pattern.sizeMm() * 100);
        return box(
                "fans",
                Fill.SOLID,
                Sum.ZERO.plus("practice.fan-need", room.fanNeedMm()),
                around(Sum.ZERO, "fan-area.length", fanArea(pattern)),
                around(Sum.ZERO, "fan-area.width", across),
                frame.depth(near, far));
    }

    private BodyBox radiator(Shape shape, Sum near, Sum far) {
        return box(
                "radiator",
                Fill.SOLID,
                Sum.ZERO,
                radiatorLength(shape),
                around(Sum.ZERO, name(shape, "width"), shape.outline().width()),
                frame.depth(near, far));
    }

    /** The radiator's reach along the mount, relative to the pattern's centre. */
    static Edges radiatorLength(Shape shape) {
        Dimension port = shape.outline().portOverhang();
        Dimension blank = shape.outline().blankOverhang();
        boolean low = shape.portEnd() == PortEnd.LOW;
        Edges fans = around(Sum.ZERO, "fan-area.length", fanArea(shape.pattern()));
        String lowName = name(shape, low ? "port-overhang" : "blank-overhang");
        String highName = name(shape, low ? "blank-overhang" : "port-overhang");
        return new Edges(
                fans.from().minus(lowName, low ? port : blank), fans.to().plus(highName, low ? blank : port));
    }

    private void addPorts(List<BodyBox> boxes, Shape shape, Sum near, Sum far) {
        for (Radiator.Port port : shape.outline().ports()) {
            if (port.face() == PortFace.BROAD) {
                Sum reach = far.plus("practice.port-room", room.portRoomMm());
                boxes.add(portBox(alongAtPort(shape, port), aside(port), frame.depth(far, reach)));
            } else {
                Sum middle = middle(shape, near);
                Edges depth = frame.depth(
                        middle.minus("practice.fitting-radius", room.fittingRadiusMm()),
                        middle.plus("practice.fitting-radius", room.fittingRadiusMm()));
                boxes.add(portBox(outOfTank(shape), aside(port), depth));
            }
        }
    }

    /** A radiator's mid-plane; a half hundredth is left out, so that it is rounded towards the panel on every face. */
    private static Sum middle(Shape shape, Sum near) {
        Sum middle =
                near.plusHalves(1, name(shape, "thickness"), shape.outline().thickness());
        return shape.thicknessHmm() % 2 == 0 ? middle : middle.plusHalves(-1, "half-hundredth", exact(1));
    }

    private void addPortsThroughPanel(List<BodyBox> boxes, Shape shape) {
        for (Radiator.Port port : shape.outline().ports()) {
            if (port.face() == PortFace.BROAD) {
                Sum reach = Sum.ZERO.plus("practice.port-room", room.portRoomMm());
                boxes.add(portBox(alongAtPort(shape, port), aside(port), frame.depth(Sum.ZERO, reach)));
            }
        }
    }

    private BodyBox portBox(Edges along, Edges aside, Edges depth) {
        return box("radiator port", Fill.ROOM, Sum.ZERO, along, aside, depth);
    }

    private Edges alongAtPort(Shape shape, Radiator.Port port) {
        int sign = shape.portEnd() == PortEnd.LOW ? -1 : 1;
        Sum centre = Sum.ZERO
                .plusHalves(sign, "fan-area.length", fanArea(shape.pattern()))
                .plusHalves(2 * sign, name(shape, "port.from-fan-area"), port.fromFanAreaMm());
        return within(centre);
    }

    private Edges aside(Radiator.Port port) {
        return within(Sum.ZERO.plus("radiator.port.aside", port.asideMm()));
    }

    private Edges outOfTank(Shape shape) {
        Edges tank = radiatorLength(shape);
        boolean low = shape.portEnd() == PortEnd.LOW;
        return low
                ? new Edges(tank.from().minus("practice.port-room", room.portRoomMm()), tank.from())
                : new Edges(tank.to(), tank.to().plus("practice.port-room", room.portRoomMm()));
    }

    private Edges within(Sum centre) {
        return new Edges(
                centre.minus("practice.fitting-radius", room.fittingRadiusMm()),
                centre.plus("practice.fitting-radius", room.fittingRadiusMm()));
    }

    private static Edges around(Sum centre, String name, Dimension whole) {
        return new Edges(centre.plusHalves(-1, name, whole), centre.plusHalves(1, name, whole));
    }

    private static Dimension fanArea(Pattern pattern) {
        return exact(pattern.fans() * pattern.sizeMm() * 100);
    }

    /** A nominal size that a standard fixes. */
    private static Dimension exact(int hmm) {
        return new Dimension(hmm, 0, loopwright.quantity.Known.DATASHEET);
    }

    private BodyBox box(String what, Fill fill, Sum need, Edges along, Edges aside, Edges depth) {
        return new BodyBox(
                what,
                fill,
                need,
                pick(Axis.X, along, aside, depth),
                pick(Axis.Y, along, aside, depth),
                pick(Axis.Z, along, aside, depth));
    }

    private Edges pick(Axis axis, Edges along, Edges aside, Edges depth) {
        if (axis == frame.lengthwise()) {
            return along;
        }
        return axis == frame.sideways() ? aside : depth;
    }
}

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

    private static final String PORT_ROOM = "practice.room.port_room_mm";
    private static final String FITTING_RADIUS = "practice.room.fitting_radius_mm";

    private final MountFrame frame;
    private final Shape shape;
    private final StackNames names;
    private final Dimension portRoom;
    private final Dimension fittingRadius;
    private final Dimension fanNeed;

    StackBodies(MountFrame frame, Shape shape, Practice practice) {
        this.frame = frame;
        this.shape = shape;
        this.names = StackNames.of(frame, shape);
        this.portRoom = Allowance.of(practice.room().portRoomMm());
        this.fittingRadius = Allowance.of(practice.room().fittingRadiusMm());
        this.fanNeed = Allowance.of(practice.room().fanNeedMm());
    }

    Body body() {
        List<BodyBox> boxes = new ArrayList<>();
        Sum depth = frame.gasket();
        int layers = shape.arrangement().fanLayers()
                - (int) shape.arrangement().inside().stream()
                        .filter(l -> l == Arrangement.Layer.FANS)
                        .count();
        for (Arrangement.Layer layer : shape.arrangement().inside()) {
            Sum near = depth;
            if (layer == Arrangement.Layer.FANS) {
                layers++;
                depth = depth.plus(names.fans(layers, "frame.thickness_mm"), shape.fanThickness());
                boxes.add(fans(layers, near, depth));
            } else {
                depth = depth.plus(
                        names.radiator("body.thickness_mm"), shape.outline().thickness());
                boxes.add(radiator(near, depth));
                addPorts(boxes, near, depth);
            }
        }
        if (shape.arrangement().inCover().contains(Arrangement.Layer.RADIATOR)) {
            addPortsThroughPanel(boxes);
        }
        return new Body("stack:" + frame.mount().id(), frame.mount().id() + " " + shape.pattern(), boxes);
    }

    private BodyBox fans(int layer, Sum near, Sum far) {
        Pattern pattern = shape.pattern();
        String name = names.fans(layer, "frame.size_mm");
        return box(
                "fans",
                Fill.SOLID,
                Sum.ZERO.plus("practice.room.fan_need_mm", fanNeed),
                around(Sum.ZERO, name, fanArea(pattern)),
                around(Sum.ZERO, name, exact(pattern.sizeMm() * 100)),
                frame.depth(near, far));
    }

    private BodyBox radiator(Sum near, Sum far) {
        return box(
                "radiator",
                Fill.SOLID,
                Sum.ZERO,
                radiatorLength(names),
                around(
                        Sum.ZERO,
                        names.radiator("body.width_mm"),
                        shape.outline().width()),
                frame.depth(near, far));
    }

    /** The radiator's reach along the mount, relative to the pattern's centre. */
    static Edges radiatorLength(StackNames names) {
        RadiatorOutline outline = names.shape().outline();
        Dimension port = outline.portOverhang();
        Dimension blank = outline.blankOverhang();
        boolean low = names.shape().portEnd() == PortEnd.LOW;
        Edges fans = around(Sum.ZERO, names.radiator("pattern"), fanArea(outline.pattern()));
        String portName = names.radiator("body.port_overhang_mm");
        String blankName = names.radiator("body.blank_overhang_mm");
        return new Edges(
                fans.from().minus(low ? portName : blankName, low ? port : blank),
                fans.to().plus(low ? blankName : portName, low ? blank : port));
    }

    private void addPorts(List<BodyBox> boxes, Sum near, Sum far) {
        List<Radiator.Port> ports = shape.outline().ports();
        for (int i = 0; i < ports.size(); i++) {
            if (ports.get(i).face() == PortFace.BROAD) {
                Sum reach = far.plus(PORT_ROOM, portRoom);
                boxes.add(portBox(alongAtPort(i), aside(i), frame.depth(far, reach)));
            } else {
                Sum middle = middle(near);
                Edges depth = frame.depth(
                        middle.minus(FITTING_RADIUS, fittingRadius), middle.plus(FITTING_RADIUS, fittingRadius));
                boxes.add(portBox(outOfTank(), aside(i), depth));
            }
        }
    }

    /** The radiator's mid-plane; a half hundredth is left out, so that it is rounded towards the panel on every face. */
    private Sum middle(Sum near) {
        Sum middle = near.plusHalves(
                1, names.radiator("body.thickness_mm"), shape.outline().thickness());
        return shape.thicknessHmm() % 2 == 0 ? middle : middle.plusHalves(-1, "half-hundredth", exact(1));
    }

    private void addPortsThroughPanel(List<BodyBox> boxes) {
        List<Radiator.Port> ports = shape.outline().ports();
        for (int i = 0; i < ports.size(); i++) {
            if (ports.get(i).face() == PortFace.BROAD) {
                Sum reach = Sum.ZERO.plus(PORT_ROOM, portRoom);
                boxes.add(portBox(alongAtPort(i), aside(i), frame.depth(Sum.ZERO, reach)));
            }
        }
    }

    private BodyBox portBox(Edges along, Edges aside, Edges depth) {
        return box("radiator port", Fill.ROOM, Sum.ZERO, along, aside, depth);
    }

    private String port(int index, String field) {
        return names.radiator("ports.at." + (index + 1) + "." + field);
    }

    private Edges alongAtPort(int index) {
        int sign = shape.portEnd() == PortEnd.LOW ? -1 : 1;
        Sum centre = Sum.ZERO
                .plusHalves(sign, names.radiator("pattern"), fanArea(shape.pattern()))
                .plusHalves(
                        2 * sign,
                        port(index, "from_fan_area_mm"),
                        shape.outline().ports().get(index).fromFanAreaMm());
        return within(centre);
    }

    private Edges aside(int index) {
        return within(Sum.ZERO.plus(
                port(index, "aside_mm"), shape.outline().ports().get(index).asideMm()));
    }

    private Edges outOfTank() {
        Edges tank = radiatorLength(names);
        return shape.portEnd() == PortEnd.LOW
                ? new Edges(tank.from().minus(PORT_ROOM, portRoom), tank.from())
                : new Edges(tank.to(), tank.to().plus(PORT_ROOM, portRoom));
    }

    private Edges within(Sum centre) {
        return new Edges(centre.minus(FITTING_RADIUS, fittingRadius), centre.plus(FITTING_RADIUS, fittingRadius));
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

package loopwright.workshop.template;

import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Shell;
import loopwright.quantity.Dimension;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/**
 * A panel as it is looked at: which way of the chassis runs to the right and which up.
 *
 * <p>Seen from outside, right × up is the way the panel looks. Roof and floor have the case's front at the bottom.
 *
 * @param walls what the inside walls next to the panel enclose
 * @param words from where it is seen, and which way up
 */
public record PanelView(Panel panel, Way right, Way up, Area walls, String words) {

    /** An axis of the chassis, along it or against it. */
    public record Way(Axis axis, int sign) {
        int of(int coordinateHmm) {
            return sign * coordinateHmm;
        }
    }

    /** Seen from outside. */
    public static PanelView outside(Chassis chassis, Panel panel) {
        Way right = rightOutside(panel.face());
        return view(chassis, panel, right);
    }

    /** Seen from inside, the same way up. */
    public static PanelView inside(Chassis chassis, Panel panel) {
        Way right = rightOutside(panel.face());
        return view(chassis, panel, new Way(right.axis(), -right.sign())).seen("seen from INSIDE");
    }

    /** Which way up a panel is drawn. */
    private static String outsideWords(Face face) {
        return switch (face) {
            case ROOF, FLOOR -> "seen from OUTSIDE, the case's front edge at the bottom";
            case FRONT, REAR, LEFT, RIGHT -> "seen from OUTSIDE, upright";
        };
    }

    /** The same, seen from somewhere else in words: a plate inside the case has no outside. */
    PanelView seen(String from) {
        return new PanelView(panel, right, up, walls, from);
    }

    private static PanelView view(Chassis chassis, Panel panel, Way right) {
        Way up = new Way(panel.face().normal() == Axis.Z ? Axis.Y : Axis.Z, 1);
        Shell.Interior interior = chassis.shell().interior();
        Area walls = Area.between(
                new Dot(0, 0), new Dot(right.of(size(interior, right.axis())), up.of(size(interior, up.axis()))));
        return new PanelView(panel, right, up, walls, outsideWords(panel.face()));
    }

    private static Way rightOutside(Face face) {
        return switch (face) {
            case ROOF, FRONT -> new Way(Axis.X, 1);
            case FLOOR, REAR -> new Way(Axis.X, -1);
            case LEFT -> new Way(Axis.Y, -1);
            case RIGHT -> new Way(Axis.Y, 1);
        };
    }

    /** Free inside along an axis. */
    static int size(Shell.Interior interior, Axis axis) {
        return switch (axis) {
            case X -> interior.widthMm().valueHmm();
            case Y -> interior.depthMm().valueHmm();
            case Z -> interior.heightMm().valueHmm();
        };
    }

    /** A point by its coordinate along one axis of the panel and along the other. */
    public Dot dot(Axis axis, int alongHmm, int otherHmm) {
        return right.axis() == axis
                ? new Dot(right.of(alongHmm), up.of(otherHmm))
                : new Dot(right.of(otherHmm), up.of(alongHmm));
    }

    /** Of a rectangle in the panel's plane; empty where a span is missing or not measured. */
    public Optional<Area> area(Panel.Patch patch) {
        return area(patch.along(right.axis()), patch.along(up.axis()));
    }

    /** Of two spans, the first along the axis that runs to the right. */
    Optional<Area> area(Optional<Span> across, Optional<Span> upwards) {
        if (across.isEmpty() || upwards.isEmpty() || isUnknown(across.get()) || isUnknown(upwards.get())) {
            return Optional.empty();
        }
        return Optional.of(Area.between(
                new Dot(
                        right.of(value(across.get().from())),
                        up.of(value(upwards.get().from()))),
                new Dot(
                        right.of(value(across.get().to())),
                        up.of(value(upwards.get().to())))));
    }

    /** The flat part; the walls where it is not known. */
    public Area flat() {
        return area(panel.flat()).orElse(walls);
    }

    /** The wall or edge of the case that lies at the left or right of the view. */
    public String edgeWords(Way way, boolean high) {
        boolean far = way.sign() > 0 == high;
        return switch (way.axis()) {
            case X -> far ? "right" : "left";
            case Y -> far ? "rear" : "front";
            case Z -> far ? "upper" : "lower";
        };
    }

    private static boolean isUnknown(Span span) {
        return span.from().isUnknown() || span.to().isUnknown();
    }

    private static int value(Dimension dimension) {
        return dimension.valueHmm();
    }
}

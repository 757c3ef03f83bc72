package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Box;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Inside;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Wiring;
import loopwright.quantity.Dimension;

/**
 * A thin body inside the case that a mod cuts a hole for cables in: the board's tray, a shroud. It has a plane, so it gets a
 * template of its own, seen from the room before it.
 *
 * @param id of the body, with the number of the box where it has several
 * @param through the axis that is square to it
 */
record Plate(Chassis chassis, String id, Box box, Axis through) {

    /** What counts as a sheet; thicker bodies are frames. */
    private static final int THICKEST_HMM = 300;

    /** Every sheet that stands inside with these mods. */
    static List<Plate> all(Setting setting) {
        List<Plate> out = new ArrayList<>();
        Inside inside = setting.chassis().inside();
        inside.obstructions().forEach(o -> add(out, setting.chassis(), o.id(), o.boxes()));
        inside.removables().stream()
                .filter(r -> setting.mods().stream()
                        .noneMatch(m -> m.effect().removes().contains(r.id())))
                .forEach(r -> add(out, setting.chassis(), r.id(), r.boxes()));
        setting.mods().forEach(m -> m.effect().adds().forEach(o -> add(out, setting.chassis(), o.id(), o.boxes())));
        return out;
    }

    private static void add(List<Plate> out, Chassis chassis, String id, List<Box> boxes) {
        for (int i = 0; i < boxes.size(); i++) {
            for (Axis axis : Axis.values()) {
                if (length(boxes.get(i).along(axis)) <= THICKEST_HMM) {
                    String name = boxes.size() == 1 ? id : id + " " + (i + 1);
                    out.add(new Plate(chassis, name, boxes.get(i), axis));
                }
            }
        }
    }

    private static int length(Span span) {
        return span.to().valueHmm() - span.from().valueHmm();
    }

    /** Seen from the side on which the case has more room. */
    PanelView view() {
        int size = PanelView.size(chassis.shell().interior(), through);
        boolean high = 2 * box.along(through).from().valueHmm() > size;
        Face face = switch (through) {
            case X -> high ? Face.LEFT : Face.RIGHT;
            case Y -> high ? Face.FRONT : Face.REAR;
            case Z -> high ? Face.FLOOR : Face.ROOF;
        };
        Panel sheet = new Panel(
                id,
                face,
                Dimension.ofHmm(length(box.along(through))),
                material(),
                new Panel.Patch(flat(Axis.X), flat(Axis.Y), flat(Axis.Z)),
                new Panel.Features(List.of(), List.of(), folds(), List.of()));
        return PanelView.outside(chassis, sheet).seen("seen from " + from(face));
    }

    /** That of the case's first sheet that is no glass: the files do not say it of a plate inside. */
    private Panel.Material material() {
        return chassis.shell().panels().stream()
                .map(Panel::material)
                .filter(m -> m != Panel.Material.GLASS)
                .findFirst()
                .orElse(Panel.Material.STEEL);
    }

    private static String from(Face face) {
        return switch (face) {
            case LEFT -> "the case's LEFT side, upright";
            case RIGHT -> "the case's RIGHT side, upright";
            case FRONT -> "the case's FRONT, upright";
            case REAR -> "the case's REAR, upright";
            case ROOF -> "ABOVE, the case's front edge at the bottom";
            case FLOOR -> "BELOW, the case's front edge at the bottom";
        };
    }

    private Optional<Span> flat(Axis axis) {
        return axis == through ? Optional.empty() : Optional.of(box.along(axis));
    }

    /** Bodies of the case as delivered that stand against it: a fold, another plate. */
    private List<Panel.Feature> folds() {
        List<Panel.Feature> out = new ArrayList<>();
        for (Inside.Obstruction other : chassis.inside().obstructions()) {
            for (Box body : other.boxes()) {
                if (!body.equals(box) && touches(body)) {
                    out.add(new Panel.Feature(
                            other.id(),
                            new Panel.Patch(against(Axis.X, body), against(Axis.Y, body), against(Axis.Z, body))));
                }
            }
        }
        return out;
    }

    private Optional<Span> against(Axis axis, Box body) {
        return axis == through ? Optional.empty() : Optional.of(body.along(axis));
    }

    private boolean touches(Box body) {
        for (Axis axis : Axis.values()) {
            if (body.along(axis).from().valueHmm() > box.along(axis).to().valueHmm()
                    || body.along(axis).to().valueHmm() < box.along(axis).from().valueHmm()) {
                return false;
            }
        }
        return true;
    }

    /** Whether a hole for cables lies in it. */
    boolean holds(Wiring.RoutingHole hole) {
        for (Axis axis : Axis.values()) {
            Dimension at = hole.at().along(axis);
            if (at.isUnknown()
                    || at.valueHmm() < box.along(axis).from().valueHmm()
                    || at.valueHmm() > box.along(axis).to().valueHmm()) {
                return false;
            }
        }
        return true;
    }
}

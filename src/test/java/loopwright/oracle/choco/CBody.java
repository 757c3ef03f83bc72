package loopwright.oracle.choco;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pose;
import loopwright.catalog.chassis.Inside;
import loopwright.quantity.Dimension;
import org.chocosolver.solver.variables.BoolVar;

/** A body that stands in the case when all of {@code when} are true. */
final class CBody {
    final List<BoolVar> when;
    final String chassisId;
    final boolean onBoard;
    final EnumSet<Face> against = EnumSet.noneOf(Face.class);
    final List<String> touches = new ArrayList<>();
    final List<CBox> boxes = new ArrayList<>();
    boolean unknown;

    CBody(List<BoolVar> when, String chassisId, boolean onBoard) {
        this.when = when;
        this.chassisId = chassisId;
        this.onBoard = onBoard;
    }

    boolean ofChassis() {
        return !chassisId.isEmpty();
    }

    int mm(Dimension dimension) {
        unknown = unknown || dimension.isUnknown();
        return dimension.valueHmm();
    }

    CEdge edge(Dimension dimension) {
        mm(dimension);
        return CEdge.of(dimension);
    }

    /** Room that somebody decided to keep free: as much as it says. */
    CEdge kept(Dimension dimension) {
        return CEdge.sharp(mm(dimension));
    }

    CBody chassisBoxes(Inside.Obstruction obstruction) {
        obstruction.boxes().forEach(this::chassisBox);
        return this;
    }

    void chassisBox(loopwright.catalog.basis.Box box) {
        boxes.add(CBox.of(ends(box.xMm()), ends(box.yMm()), ends(box.zMm()), false, 0));
    }

    private CBox.Ends ends(loopwright.catalog.basis.Span span) {
        return CBox.Ends.sorted(edge(span.from()), edge(span.to()));
    }

    /** Adds a box given in a part's frame. */
    void local(Pose pose, CBox.Ends l, CBox.Ends w, CBox.Ends h, boolean room) {
        boxes.add(CBox.of(
                turned(pose, Axis.X, l, w, h), turned(pose, Axis.Y, l, w, h), turned(pose, Axis.Z, l, w, h), room, 0));
    }

    private CBox.Ends turned(Pose pose, Axis axis, CBox.Ends l, CBox.Ends w, CBox.Ends h) {
        boolean isLength = pose.length().axis() == axis;
        boolean isWidth = pose.width().axis() == axis;
        CBox.Ends local = isLength ? l : isWidth ? w : h;
        int sign = (isLength ? pose.length() : isWidth ? pose.width() : pose.height()).sign();
        CEdge corner = edge(pose.corner().along(axis));
        return CBox.Ends.sorted(corner.and(sign, local.from()), corner.and(sign, local.to()));
    }

    /** Whether the two may interpenetrate as far as the rules care. */
    boolean ignores(CBody other) {
        if ((ofChassis() && other.ofChassis()) || (onBoard && other.onBoard)) {
            return true;
        }
        return (other.ofChassis() && touches.contains(other.chassisId))
                || (ofChassis() && other.touches.contains(chassisId));
    }

    boolean clash(CBody other, CBeyond beyond) {
        if (ignores(other)) {
            return false;
        }
        return boxes.stream().anyMatch(a -> other.boxes.stream().anyMatch(b -> clash(a, b, beyond)));
    }

    private static boolean clash(CBox a, CBox b, CBeyond beyond) {
        if (a.room() && b.room()) {
            return false;
        }
        int need = Math.max(a.needHmm(), b.needHmm());
        for (Axis axis : Axis.values()) {
            CBox.Ends ea = a.along(axis);
            CBox.Ends eb = b.along(axis);
            if (a.from(axis) - b.to(axis) >= need + beyond.between(axis, ea.from(), eb.to())
                    || b.from(axis) - a.to(axis) >= need + beyond.between(axis, eb.from(), ea.to())) {
                return false;
            }
        }
        return true;
    }

    boolean pokesOut(CBeyond beyond) {
        if (ofChassis()) {
            return false;
        }
        for (Face wall : Face.values()) {
            for (CBox box : boxes) {
                Axis axis = wall.normal();
                int gap = wall.isHigh()
                        ? beyond.inside().get(axis).valueHmm()
                                - box.to(axis)
                                - beyond.toHighWall(axis, box.along(axis).to())
                        : box.from(axis)
                                - beyond.toLowWall(axis, box.along(axis).from());
                if (!against.contains(wall) && gap < box.needHmm()) {
                    return true;
                }
            }
        }
        return false;
    }

    CBody may(List<Face> walls, List<String> bodies) {
        against.addAll(walls);
        touches.addAll(Set.copyOf(bodies));
        return this;
    }
}

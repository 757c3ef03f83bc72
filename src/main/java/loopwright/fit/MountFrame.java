package loopwright.fit;

import java.util.Arrays;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.Shell;
import loopwright.geometry.Edges;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;

/**
 * A mount's own frame: along it, across it, and inwards from its seat plane.
 *
 * @param index place in the chassis's list of mounts
 * @param gasket how deep a stack starts: what its gasket squeezes to
 */
public record MountFrame(
        int index, Mount mount, Panel panel, Axis lengthwise, Axis sideways, Sum seatPlane, Sum gasket) {

    /** The frame of a mount. */
    public static MountFrame of(Chassis chassis, int index) {
        Mount mount = chassis.mounts().get(index);
        Panel panel = chassis.shell().panels().stream()
                .filter(p -> p.id().equals(mount.panel()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("mount " + mount.id() + " names no panel"));
        Axis normal = panel.face().normal();
        Axis sideways = Arrays.stream(Axis.values())
                .filter(a -> a != normal && a != mount.lengthwise())
                .findFirst()
                .orElseThrow();
        Sum wall = panel.face().isHigh() ? wall(chassis, normal) : Sum.ZERO;
        Sum plane =
                wall.plusHalves(panel.face().isHigh() ? -2 : 2, address(chassis, mount) + ".inset_mm", mount.insetMm());
        Sum gasket = mount.gasket()
                .map(g -> Sum.ZERO.plus(address(chassis, mount) + ".gasket.squeezed_mm", g.squeezedMm()))
                .orElse(Sum.ZERO);
        return new MountFrame(index, mount, panel, mount.lengthwise(), sideways, plane, gasket);
    }

    /** Where the catalogue has a mount. */
    static String address(Chassis chassis, Mount mount) {
        return chassis.id() + ".mounts." + mount.id();
    }

    /** Where the far wall along an axis is. */
    static Sum wall(Chassis chassis, Axis axis) {
        String size = switch (axis) {
            case X -> "width_mm";
            case Y -> "depth_mm";
            case Z -> "height_mm";
        };
        return Sum.ZERO.plus(
                chassis.id() + ".shell.interior." + size,
                interior(chassis.shell().interior(), axis));
    }

    /** The interior's size along an axis. */
    static Dimension interior(Shell.Interior interior, Axis axis) {
        return switch (axis) {
            case X -> interior.widthMm();
            case Y -> interior.depthMm();
            case Z -> interior.heightMm();
        };
    }

    /** The axis square to the panel. */
    public Axis normal() {
        return panel.face().normal();
    }

    /** The coordinates between two depths inwards from the seat plane. */
    Edges depth(Sum near, Sum far) {
        int inwards = panel.face().isHigh() ? -1 : 1;
        Sum a = seatPlane.plus(inwards, near);
        Sum b = seatPlane.plus(inwards, far);
        return inwards > 0 ? new Edges(a, b) : new Edges(b, a);
    }
}

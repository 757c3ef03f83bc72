package loopwright.catalog.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.ModSeat;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;

/**
 * A seat of a chassis with the mount and panel it is on.
 *
 * @param path where it stands in the chassis
 * @param madeNew whether a mod makes its holes
 * @param onSheet whether its screws go through the panel's sheet: not into an inset bracket, and not into the flange of
 *     a cover over a window
 */
record PlacedSeat(String path, Mount.Seat seat, Mount mount, Panel panel, boolean madeNew, boolean onSheet) {

    /** Every seat whose mount and panel exist and whose mount lies in its panel's plane. */
    static List<PlacedSeat> allOf(Items.Placed<Chassis> placed) {
        Chassis chassis = placed.value();
        List<PlacedSeat> out = new ArrayList<>();
        for (int i = 0; i < chassis.mounts().size(); i++) {
            Mount mount = chassis.mounts().get(i);
            for (int j = 0; j < mount.seats().size(); j++) {
                String path = "mounts[" + i + "].seats[" + j + "]";
                add(out, chassis, path, mount.seats().get(j), mount, Optional.empty());
            }
        }
        for (int i = 0; i < chassis.mods().size(); i++) {
            Mod mod = chassis.mods().get(i);
            for (int j = 0; j < mod.effect().seats().size(); j++) {
                ModSeat seat = mod.effect().seats().get(j);
                String path = "mods[" + i + "].effect.seats[" + j + "].seat";
                findMount(chassis, seat.mount())
                        .ifPresent(mount -> add(out, chassis, path, seat.seat(), mount, Optional.of(mod)));
            }
        }
        return out;
    }

    /** The mount with an id. */
    static Optional<Mount> findMount(Chassis chassis, String id) {
        return chassis.mounts().stream().filter(m -> m.id().equals(id)).findFirst();
    }

    /** The panel of a mount. */
    static Optional<Panel> findPanel(Chassis chassis, Mount mount) {
        return chassis.shell().panels().stream()
                .filter(p -> p.id().equals(mount.panel()))
                .findFirst();
    }

    /** The axis across the mount. */
    static Axis sideways(Mount mount, Panel panel) {
        for (Axis axis : Axis.values()) {
            if (axis != mount.lengthwise() && axis != panel.face().normal()) {
                return axis;
            }
        }
        throw new IllegalArgumentException("three axes, two taken");
    }

    /** The flat's span along an axis, if it is given and known. */
    Optional<Span> flatAlong(Axis axis) {
        return panel.flat().along(axis).filter(s -> !s.from().isUnknown() && !s.to().isUnknown());
    }

    private static void add(
            List<PlacedSeat> out, Chassis chassis, String path, Mount.Seat seat, Mount mount, Optional<Mod> mod) {
        findPanel(chassis, mount).ifPresent(panel -> {
            if (mount.lengthwise() != panel.face().normal()) {
                boolean onFlange = mod.isPresent()
                        && mod.get().effect().covers().stream()
                                .anyMatch(c -> c.mount().equals(mount.id()) && c.over() == RaisedCover.Over.WINDOW);
                boolean onSheet = !onFlange && mount.insetMm().valueHmm() == 0;
                out.add(new PlacedSeat(path, seat, mount, panel, mod.isPresent(), onSheet));
            }
        });
    }
}

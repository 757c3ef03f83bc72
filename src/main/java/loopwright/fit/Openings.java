package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.quantity.Dimension;

/**
 * How open a mount is, as the geometry of its cuts says, and what air it has outside.
 *
 * <p>Shares are of the circle that the fan's blades sweep, 0 to 1. Cuts follow the stack, so a share does not depend
 * on where in its range the stack sits.
 */
public final class Openings {

    private final Catalog catalog;
    private final Chassis chassis;

    /** Openings of a chassis. */
    public Openings(Catalog catalog, Chassis chassis) {
        this.catalog = catalog;
        this.chassis = chassis;
    }

    /** Open share of the panel in front of a pattern's fans. */
    public double freeArea(Mount mount, Pattern pattern, ModSet mods) {
        double best = mount.opening().freeArea();
        for (Mod mod : mods.mods(chassis)) {
            for (Airway airway : mod.effect().airways()) {
                if (airway.mount().equals(mount.id())) {
                    best = Math.max(best, share(airway, pattern));
                }
            }
            for (RaisedCover cover : mod.effect().covers()) {
                if (cover.mount().equals(mount.id())) {
                    best = 1;
                }
            }
        }
        return best;
    }

    /** Where that share lies: before the fans as soon as a mod has opened more than there was. */
    public Mount.Where where(Mount mount, Pattern pattern, ModSet mods) {
        return freeArea(mount, pattern, mods) > mount.opening().freeArea()
                ? Mount.Where.FACE
                : mount.opening().where();
    }

    private double share(Airway airway, Pattern pattern) {
        double closing = airway.freeArea().orElse(airway.cut().isPresent() ? 1.0 : 0.0);
        if (airway.cut().isEmpty()) {
            return closing;
        }
        double ringHmm = ringHmm(pattern.sizeMm());
        double cutHmm = airway.cutMm().map(Dimension::valueHmm).orElse(0);
        double ratio = Math.min(1, cutHmm / ringHmm);
        return closing
                * switch (airway.cut().get()) {
                    case RINGS -> ratio * ratio;
                    case STRIP -> stripShare(ratio);
                    case FULL -> 1.0;
                };
    }

    /** Share of a circle that lies within a centred strip of {@code ratio} times its diameter; plane geometry. */
    static double stripShare(double ratio) {
        return 2 / Math.PI * (StrictMath.asin(ratio) + ratio * Math.sqrt(1 - ratio * ratio));
    }

    private double ringHmm(int sizeMm) {
        return catalog.standards().fans().stream()
                .filter(f -> f.sizeMm() == sizeMm)
                .findFirst()
                .map(f -> (double) f.ringMm().valueHmm())
                .orElse(sizeMm * 100.0);
    }

    /** Open share of the filter in front of a mount, 1 without one. */
    public double filterShare(Mount mount, ModSet mods) {
        double share = mount.opening().filterFreeArea().orElse(1.0);
        for (Mod mod : mods.mods(chassis)) {
            for (Airway airway : mod.effect().airways()) {
                if (airway.mount().equals(mount.id()) && airway.filterFreeArea().isPresent()) {
                    share = airway.filterFreeArea().get();
                }
            }
        }
        return share;
    }

    /** Free depth outside the panel, hundredths of a millimetre. */
    public int outsideDepthHmm(Mount mount, ModSet mods) {
        int depth = mount.opening().outsideDepthMm().valueHmm();
        for (Mod mod : mods.mods(chassis)) {
            for (Airway airway : mod.effect().airways()) {
                if (airway.mount().equals(mount.id())) {
                    depth += airway.addedDepthMm().map(Dimension::valueHmm).orElse(0);
                }
            }
        }
        return depth;
    }

    /** Dimensions of cuts and depths that a stack on the mount depends on and that are not known. */
    List<String> unknowns(Mount mount, Arrangement arrangement, ModSet mods) {
        List<String> out = new ArrayList<>();
        boolean inside = !arrangement.needsCover();
        if (inside && mount.opening().outsideDepthMm().isUnknown()) {
            out.add(MountFrame.address(chassis, mount) + ".opening.outside_depth_mm");
        }
        for (Mod mod : mods.mods(chassis)) {
            for (int i = 0; i < mod.effect().airways().size(); i++) {
                Airway airway = mod.effect().airways().get(i);
                String name = ModRules.address(chassis, mod) + ".effect.airways." + (i + 1);
                if (airway.mount().equals(mount.id())) {
                    boolean cut = airway.cut().filter(c -> c != Airway.Cut.FULL).isPresent();
                    if (cut && airway.cutMm().filter(Dimension::isUnknown).isPresent()) {
                        out.add(name + ".cut_mm");
                    }
                    if (inside
                            && airway.addedDepthMm()
                                    .filter(Dimension::isUnknown)
                                    .isPresent()) {
                        out.add(name + ".added_depth_mm");
                    }
                }
            }
        }
        return List.copyOf(out);
    }

    /** The raised covers that a mod set puts over a mount; a valid set puts one there at most. */
    List<RaisedCover> covers(Mount mount, ModSet mods) {
        return mods.mods(chassis).stream()
                .flatMap(m -> m.effect().covers().stream())
                .filter(c -> c.mount().equals(mount.id()))
                .toList();
    }

    /** The raised cover that a mod set puts over a mount. */
    public Optional<RaisedCover> cover(Mount mount, ModSet mods) {
        return mods.mods(chassis).stream()
                .flatMap(m -> m.effect().covers().stream())
                .filter(c -> c.mount().equals(mount.id()))
                .findFirst();
    }

    /** Where the catalogue has a raised cover. */
    String coverAddress(RaisedCover cover) {
        for (Mod mod : chassis.mods()) {
            for (int i = 0; i < mod.effect().covers().size(); i++) {
                if (mod.effect().covers().get(i).equals(cover)) {
                    return ModRules.address(chassis, mod) + ".effect.covers." + (i + 1);
                }
            }
        }
        throw new IllegalArgumentException("no mod has the cover " + cover);
    }
}

package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import loopwright.catalog.basis.Pattern;
import loopwright.catalog.chassis.Airway;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.Panel;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.standard.Standards;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;
import loopwright.quantity.Dimension;

/**
 * A cut that leaves bare metal, for primer the same day.
 *
 * @param lengthHmm of the edge, where its shape is known
 * @param isSteel whether it rusts
 */
public record BareEdge(String mod, String panel, OptionalInt lengthHmm, boolean isSteel) {

    /** The cuts of mods, in their order. */
    static List<BareEdge> of(FitCase fitCase, List<Mod> done, List<Stack> stacks) {
        List<BareEdge> out = new ArrayList<>();
        for (Mod mod : done) {
            if (mod.look().visibleCuts() + mod.look().hiddenCuts() == 0) {
                continue;
            }
            List<Mount> mounts = ModPanels.mounts(fitCase.chassis(), mod);
            for (Mount mount : mounts) {
                Panel panel = ModPanels.panel(fitCase.chassis(), mount);
                if (isMetal(panel)) {
                    out.add(new BareEdge(mod.id(), panel.id(), length(fitCase, mod, mount, stacks), isSteel(panel)));
                }
            }
            if (mounts.isEmpty()) {
                out.add(elsewhere(fitCase.chassis(), mod));
            }
        }
        return List.copyOf(out);
    }

    /** A cut in something that is no mount's panel: a bay, a bracket; steel, as chassis are. */
    private static BareEdge elsewhere(Chassis chassis, Mod mod) {
        return ModPanels.of(chassis, mod).stream()
                .findFirst()
                .map(p -> new BareEdge(mod.id(), p.id(), OptionalInt.empty(), isSteel(p)))
                .orElseGet(() -> new BareEdge(mod.id(), "inside", OptionalInt.empty(), true));
    }

    private static boolean isSteel(Panel panel) {
        return panel.material() == Panel.Material.STEEL;
    }

    private static boolean isMetal(Panel panel) {
        return isSteel(panel) || panel.material() == Panel.Material.ALUMINIUM;
    }

    /** By the stack that hangs there; without one, by the first pattern of the mount. */
    private static OptionalInt length(FitCase fitCase, Mod mod, Mount mount, List<Stack> stacks) {
        return stacks.stream()
                .filter(s -> s.frame().mount().id().equals(mount.id()))
                .map(s -> s.shape().pattern())
                .findFirst()
                .or(() -> mount.seats().stream().map(Mount.Seat::pattern).findFirst())
                .map(pattern -> edge(fitCase, mod, mount, pattern))
                .orElse(OptionalInt.empty());
    }

    private static OptionalInt edge(FitCase fitCase, Mod mod, Mount mount, Pattern pattern) {
        int longHmm = pattern.fans() * pattern.sizeMm() * HMM_PER_MM;
        int wideHmm = pattern.sizeMm() * HMM_PER_MM;
        for (Airway airway : mod.effect().airways()) {
            if (airway.mount().equals(mount.id()) && airway.cut().isPresent()) {
                int cutHmm = airway.cutMm().map(Dimension::valueHmm).orElse(wideHmm);
                return OptionalInt.of(
                        switch (airway.cut().get()) {
                            case RINGS -> rings(pattern, cutHmm);
                            case STRIP -> 2 * (longHmm + cutHmm);
                            case FULL -> 2 * (longHmm + wideHmm);
                        });
            }
        }
        for (RaisedCover raised : mod.effect().covers()) {
            if (raised.mount().equals(mount.id())) {
                return OptionalInt.of(
                        raised.over() == RaisedCover.Over.WINDOW
                                ? 2 * (longHmm + wideHmm)
                                : rings(pattern, ringHmm(fitCase, pattern.sizeMm())));
            }
        }
        return OptionalInt.empty();
    }

    private static final int HMM_PER_MM = 100;

    private static int rings(Pattern pattern, int diameterHmm) {
        return (int) Math.round(pattern.fans() * Math.PI * diameterHmm);
    }

    private static int ringHmm(FitCase fitCase, int sizeMm) {
        return fitCase.catalog().standards().fans().stream()
                .filter(f -> f.sizeMm() == sizeMm)
                .map(Standards.FanPattern::ringMm)
                .findFirst()
                .map(Dimension::valueHmm)
                .orElse(sizeMm * HMM_PER_MM);
    }
}

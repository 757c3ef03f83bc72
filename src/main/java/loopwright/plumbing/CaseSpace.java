package loopwright.plumbing;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.chassis.Shell;
import loopwright.fit.FitCase;
import loopwright.fit.MountFrame;
import loopwright.fit.StandingBody;
import loopwright.geometry.SpaceBox;
import loopwright.plumbing.route.Solid;
import loopwright.plumbing.route.Space;
import loopwright.plumbing.route.Where;

/** What tube has to go round in a placed build: all matter, the room of plugs, and the air in front of fans. */
final class CaseSpace {

    private CaseSpace() {}

    /**
     * The space of a build.
     *
     * @param fromFansHmm how far tube stays from a fan's open faces
     */
    static Space of(FitCase fitCase, PlacedParts parts, int fromFansHmm) {
        List<Solid> solids = new ArrayList<>();
        List<Solid> fanAir = new ArrayList<>();
        for (StandingBody body : parts.bodies()) {
            for (SpaceBox box : body.boxes()) {
                Solid solid = PlacedParts.solid(box);
                if (!box.room()) {
                    solids.add(solid);
                } else if (!isForPorts(box.what(), parts.cardHasBlock())) {
                    solids.add(new Solid("room for " + box.what(), solid.low(), solid.high()));
                }
                if (!box.room() && body.id().startsWith("stack:") && box.what().endsWith(" fans")) {
                    fanAir.add(solid.longer(normal(fitCase, body.id()), fromFansHmm));
                }
            }
        }
        Shell.Interior inside = fitCase.chassis().shell().interior();
        Where size = new Where(
                inside.widthMm().valueHmm(),
                inside.depthMm().valueHmm(),
                inside.heightMm().valueHmm());
        return new Space(size, solids, fanAir);
    }

    /** Room that fit keeps for fittings: other runs may use it, and meet the fittings themselves. */
    private static boolean isForPorts(String what, boolean cardHasBlock) {
        return what.equals("card plugs or ports") ? cardHasBlock : what.endsWith(" ports") || what.endsWith(" port");
    }

    private static Axis normal(FitCase fitCase, String stack) {
        return fitCase.frames().stream()
                .filter(f -> stack.equals("stack:" + f.mount().id()))
                .findFirst()
                .map(MountFrame::normal)
                .orElseThrow(() -> new IllegalArgumentException("no mount for " + stack));
    }
}

package loopwright.workshop.finish;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.chassis.Chassis;
import loopwright.catalog.chassis.Mod;
import loopwright.catalog.chassis.Mount;
import loopwright.catalog.chassis.RaisedCover;
import loopwright.catalog.part.Cover;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.fit.FitCase;
import loopwright.fit.Layout.Stack;

/** Something on a painted part that paint must not reach. */
public record Mask(String part, String what) {

    /** Screws of a fan's frame. */
    private static final int PER_FAN = 4;

    static List<Mask> of(FitCase fitCase, List<PaintedPart> parts, List<Mod> done, List<Stack> stacks) {
        List<Mask> out = new ArrayList<>();
        Chassis chassis = fitCase.chassis();
        for (PaintedPart part : parts) {
            if (part.surface() == Surface.METAL) {
                out.add(
                        new Mask(
                                part.id(),
                                "earth: bare metal under one screw head and where it touches the chassis; contact grease after"));
            }
            for (Stack stack : stacks) {
                Mount mount = stack.frame().mount();
                boolean hangsOn = part.id().equals(mount.panel()) || part.id().equals(PaintedParts.insertId(mount));
                if (hangsOn) {
                    out.add(new Mask(
                            part.id(),
                            PER_FAN * stack.shape().pattern().fans() + " screw holes of the " + mount.id()
                                    + (mount.gasket().isPresent() ? ", and the strip its gasket lies on" : "")));
                }
            }
            for (Mod mod : done) {
                for (RaisedCover raised : mod.effect().covers()) {
                    covers(fitCase, chassis, part, raised, out);
                }
            }
        }
        return List.copyOf(out);
    }

    private static void covers(FitCase fitCase, Chassis chassis, PaintedPart part, RaisedCover raised, List<Mask> out) {
        Cover cover = fitCase.catalog().part(Cover.class, raised.cover());
        String panel = ModPanels.mount(chassis, raised.mount()).panel();
        if (part.id().equals(panel)) {
            out.add(new Mask(part.id(), cover.fixing().screws() + " rivet nuts of the cover: threads"));
        } else if (part.id().equals(cover.id())) {
            out.add(new Mask(part.id(), cover.fixing().screws() + " screw holes of its flange"));
        }
    }
}

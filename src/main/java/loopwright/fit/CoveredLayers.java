package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;

/**
 * What hangs in raised covers, outside the panels: fit keeps its room by the cover's size, so no body stands for it inside.
 *
 * <p>Each layer's box takes the whole depth of all layers in the cover: which is outermost is not told apart.
 */
public final class CoveredLayers {

    private static final int HMM_PER_MM = 100;

    private CoveredLayers() {}

    /** One body for each stack with something in a cover, called like the stack. */
    public static List<StandingBody> of(FitCase fitCase, Witness witness) {
        List<StandingBody> out = new ArrayList<>();
        witness.stacks().forEach(at -> find(fitCase, at).ifPresent(out::add));
        return List.copyOf(out);
    }

    private static Optional<StandingBody> find(FitCase fitCase, Witness.At at) {
        Shape shape = at.stack().shape();
        MountFrame frame = at.stack().frame();
        List<Arrangement.Layer> layers = shape.arrangement().inCover();
        if (layers.isEmpty()) {
            return Optional.empty();
        }
        int depth = 0;
        for (Arrangement.Layer layer : layers) {
            depth += layer == Arrangement.Layer.FANS ? shape.fanThickness().valueHmm() : shape.thicknessHmm();
        }
        int interior = MountFrame.interior(fitCase.chassis().shell().interior(), frame.normal())
                .valueHmm();
        int sheet = frame.panel().thicknessMm().valueHmm();
        Reach outside = frame.panel().face().isHigh()
                ? new Reach(interior + sheet, interior + sheet + depth)
                : new Reach(-sheet - depth, -sheet);
        int half = shape.pattern().fans() * shape.pattern().sizeMm() * HMM_PER_MM / 2;
        int aside = shape.pattern().sizeMm() * HMM_PER_MM / 2;
        Reach along = new Reach(at.alongHmm() - half, at.alongHmm() + half);
        Reach across = new Reach(at.asideHmm() - aside, at.asideHmm() + aside);
        List<SpaceBox> boxes = new ArrayList<>();
        for (Arrangement.Layer layer : layers) {
            String what = layer == Arrangement.Layer.FANS ? "fans" : "radiator";
            boxes.add(new SpaceBox(
                    frame.mount().id() + " " + what,
                    false,
                    0,
                    pick(frame, Axis.X, along, across, outside),
                    pick(frame, Axis.Y, along, across, outside),
                    pick(frame, Axis.Z, along, across, outside)));
        }
        return Optional.of(new StandingBody("stack:" + frame.mount().id(), boxes));
    }

    private static Reach pick(MountFrame frame, Axis axis, Reach along, Reach across, Reach outside) {
        if (axis == frame.lengthwise()) {
            return along;
        }
        return axis == frame.sideways() ? across : outside;
    }
}

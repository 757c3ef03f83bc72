package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.geometry.BodyBox;

/**
 * Where every body of a layout stands, as its witness has it: chassis coordinates, hundredths of a millimetre.
 *
 * <p>Only what is solid; room that is kept free is left out. What is in a raised cover is told as boxes outside the panel.
 */
public final class StandingBodies {

    private StandingBodies() {}

    /** From where to where along an axis. */
    public record Reach(int fromHmm, int toHmm) {}

    /** A solid box of a body, and what part of it it is. */
    public record BoxAt(String what, Reach x, Reach y, Reach z) {}

    /** A body with its id as the rules of what fits call it. */
    public record BodyAt(String id, String title, List<BoxAt> boxes) {
        /** Copies. */
        public BodyAt {
            boxes = List.copyOf(boxes);
        }
    }

    /** What is built in, the parts, and the stacks. */
    public static List<BodyAt> of(FitCase fitCase, Witness witness) {
        SceneMaker maker = new SceneMaker(fitCase, List.of());
        List<Standing> all = new ArrayList<>();
        maker.bodies()
                .builtIn(witness.mods())
                .forEach(b -> all.add(Standing.still(maker.bodies().get(b))));
        PartSet parts = new PartSet(0, witness.parts(), List.of(witness.parts()));
        maker.bodies()
                .parts(parts, RoomLeft.placing(fitCase, witness))
                .forEach(b -> all.add(Standing.still(maker.bodies().get(b))));
        for (Witness.At at : witness.stacks()) {
            Hang hang = maker.hangs(at.stack().frame(), at.stack().shape(), witness.mods())
                    .get(0);
            all.add(Standing.at(hang, at.alongHmm(), at.asideHmm()));
        }
        List<BodyAt> out = new ArrayList<>();
        all.forEach(s -> out.add(body(s)));
        witness.stacks().forEach(at -> inCover(fitCase, at, out));
        return List.copyOf(out);
    }

    private static BodyAt body(Standing standing) {
        List<BoxAt> boxes = new ArrayList<>();
        List<BodyBox> named = standing.occupant().body().boxes();
        for (int i = 0; i < named.size(); i++) {
            if (named.get(i).fill() == BodyBox.Fill.SOLID) {
                boxes.add(new BoxAt(
                        named.get(i).what(),
                        reach(standing, i, Axis.X),
                        reach(standing, i, Axis.Y),
                        reach(standing, i, Axis.Z)));
            }
        }
        return new BodyAt(
                standing.occupant().body().id(), standing.occupant().body().title(), boxes);
    }

    private static Reach reach(Standing standing, int box, Axis axis) {
        return new Reach(standing.from(box, axis), standing.to(box, axis));
    }

    /** Layers in a cover, all in the middle of their depth outside the panel: which is outermost is not told apart. */
    private static void inCover(FitCase fitCase, Witness.At at, List<BodyAt> out) {
        Shape shape = at.stack().shape();
        MountFrame frame = at.stack().frame();
        int depth = 0;
        for (Arrangement.Layer layer : shape.arrangement().inCover()) {
            depth += layer == Arrangement.Layer.FANS ? shape.fanThickness().valueHmm() : shape.thicknessHmm();
        }
        int interior = MountFrame.interior(fitCase.chassis().shell().interior(), frame.normal())
                .valueHmm();
        int sheet = frame.panel().thicknessMm().valueHmm();
        Reach outside = frame.panel().face().isHigh()
                ? new Reach(interior + sheet, interior + sheet + depth)
                : new Reach(-sheet - depth, -sheet);
        int half = shape.pattern().fans() * shape.pattern().sizeMm() * 100 / 2;
        int aside = shape.pattern().sizeMm() * 100 / 2;
        Reach along = new Reach(at.alongHmm() - half, at.alongHmm() + half);
        Reach across = new Reach(at.asideHmm() - aside, at.asideHmm() + aside);
        List<BoxAt> boxes = new ArrayList<>();
        for (Arrangement.Layer layer : shape.arrangement().inCover()) {
            boxes.add(new BoxAt(
                    layer == Arrangement.Layer.FANS ? "fans" : "radiator",
                    pick(frame, Axis.X, along, across, outside),
                    pick(frame, Axis.Y, along, across, outside),
                    pick(frame, Axis.Z, along, across, outside)));
        }
        if (!boxes.isEmpty()) {
            out.add(new BodyAt("stack:" + frame.mount().id(), frame.mount().id() + " in its cover", boxes));
        }
    }

    private static Reach pick(MountFrame frame, Axis axis, Reach along, Reach across, Reach outside) {
        if (axis == frame.lengthwise()) {
            return along;
        }
        return axis == frame.sideways() ? across : outside;
    }
}

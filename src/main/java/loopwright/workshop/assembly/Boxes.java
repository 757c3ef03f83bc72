package loopwright.workshop.assembly;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.plumbing.route.Solid;

/** Boxes that are moved along the axes. Unit: hundredths of a millimetre. */
final class Boxes {

    /** Far beyond any chassis. */
    private static final int OUTSIDE_HMM = 200_000;

    private Boxes() {}

    /** Where the boxes are and pass when they leave through a face, straight. */
    static List<SpaceBox> out(List<SpaceBox> boxes, Face face) {
        return swept(boxes, face, OUTSIDE_HMM);
    }

    /** Where the boxes are and pass on a step. */
    static List<SpaceBox> swept(List<SpaceBox> boxes, Face step, int byHmm) {
        int low = step.isHigh() ? 0 : -byHmm;
        int high = step.isHigh() ? byHmm : 0;
        return boxes.stream().map(b -> stretched(b, step.normal(), low, high)).toList();
    }

    /** The boxes after a step. */
    static List<SpaceBox> moved(List<SpaceBox> boxes, Face step, int byHmm) {
        int by = step.isHigh() ? byHmm : -byHmm;
        return boxes.stream().map(b -> stretched(b, step.normal(), by, by)).toList();
    }

    private static SpaceBox stretched(SpaceBox b, Axis axis, int from, int to) {
        return new SpaceBox(
                b.what(),
                b.room(),
                b.needHmm(),
                axis == Axis.X ? more(b.x(), from, to) : b.x(),
                axis == Axis.Y ? more(b.y(), from, to) : b.y(),
                axis == Axis.Z ? more(b.z(), from, to) : b.z());
    }

    private static Reach more(Reach reach, int from, int to) {
        return new Reach(reach.from() + from, reach.to() + to);
    }

    /** A box as the plumbing has it. */
    static SpaceBox of(Solid solid) {
        return new SpaceBox(
                solid.body(),
                false,
                0,
                new Reach(solid.low().x(), solid.high().x()),
                new Reach(solid.low().y(), solid.high().y()),
                new Reach(solid.low().z(), solid.high().z()));
    }

    /** Whether two boxes have more in common than faces. */
    static boolean overlap(SpaceBox a, SpaceBox b) {
        for (Axis axis : Axis.values()) {
            if (a.along(axis).to() <= b.along(axis).from()
                    || b.along(axis).to() <= a.along(axis).from()) {
                return false;
            }
        }
        return true;
    }

    /** Whether any box of the one overlaps any of the other. */
    static boolean anyOverlap(List<SpaceBox> ones, List<SpaceBox> others) {
        return ones.stream().anyMatch(a -> others.stream().anyMatch(b -> overlap(a, b)));
    }
}

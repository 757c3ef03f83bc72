package loopwright.workshop.template;

import java.util.List;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;

/**
 * What is drawn of one sheet of metal or acrylic.
 *
 * @param edge its own edge, or the edge of its flat
 * @param patches what else is on it or against it
 * @param existing screws in holes that are there
 */
record Plan(Edge edge, List<Patch> patches, List<Hole> holes, List<Hole> existing) {

    /**
     * The edge, and which of its sides everything is measured from.
     *
     * @param layer how it is drawn: cut for a sheet that is made, panel for one that is there
     * @param fromRight whether widths are measured from the right side, else from the left
     * @param fromTop whether heights are measured from the top, else from the bottom
     */
    record Edge(Area area, int cornerHmm, Layer layer, boolean fromRight, boolean fromTop) {

        /** The corner where both begin. */
        Dot datum() {
            return new Dot(fromRight ? area.rightHmm() : area.leftHmm(), fromTop ? area.topHmm() : area.bottomHmm());
        }

        /** A coordinate as it is measured across. */
        int acrossHmm(int xHmm) {
            return fromRight ? area.rightHmm() - xHmm : xHmm - area.leftHmm();
        }

        /** A coordinate as it is measured upwards. */
        int upHmm(int yHmm) {
            return fromTop ? area.topHmm() - yHmm : yHmm - area.bottomHmm();
        }
    }

    /** A rectangle with a name. */
    record Patch(Layer layer, Area area, String name) {}

    /** Copies. */
    Plan {
        patches = List.copyOf(patches);
        holes = List.copyOf(holes);
        existing = List.copyOf(existing);
    }
}

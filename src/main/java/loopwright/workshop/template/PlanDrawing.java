package loopwright.workshop.template;

import java.util.ArrayList;
import java.util.List;
import loopwright.quantity.Hundredths;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Drawing;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;

/**
 * Draws a plan at true scale: lines as ISO 128 has them, running dimensions from two edges as ISO 129-1 has them.
 */
final class PlanDrawing {

    /** How far centre lines reach past what they are the middle of; ISO 128-2 wants a little. */
    static final int PAST_HMM = 250;

    private static final int SMALL_HMM = 180;
    private static final int HATCH_HMM = 400;

    /** Narrower holes have their words beside them. */
    private static final int NARROW_HMM = 6000;

    /** From the corner of the datum edges to their letters. */
    private static final int LETTER_HMM = 1200;

    private final Plan plan;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Area> words = new ArrayList<>();

    private PlanDrawing(Plan plan) {
        this.plan = plan;
    }

    /** The drawing. */
    static Drawing of(Plan plan) {
        PlanDrawing drawing = new PlanDrawing(plan);
        plan.patches().forEach(drawing::patch);
        drawing.edge();
        plan.existing().forEach(drawing::existing);
        plan.holes().forEach(drawing::hole);
        drawing.marks.addAll(RunningDimensions.of(plan));
        PlanExtent extent = new PlanExtent(plan);
        return new Drawing(drawing.marks, extent.bounds(), extent.needed(), drawing.wholes());
    }

    private List<Area> wholes() {
        List<Area> out = new ArrayList<>(words);
        plan.holes().forEach(h -> out.add(h.reach()));
        plan.existing().forEach(h -> out.add(h.reach()));
        return out;
    }

    private void line(Layer layer, Dot from, Dot to) {
        marks.add(new Mark.Line(layer, from, to));
    }

    private void text(Dot at, int heightHmm, Mark.Stand stand, String words) {
        marks.add(new Mark.Text(Layer.WORDS, at, heightHmm, stand, words));
    }

    private void edge() {
        Plan.Edge edge = plan.edge();
        Area area = edge.area();
        marks.add(new Mark.Rounded(edge.layer(), area, edge.cornerHmm()));
        int x = edge.fromRight() ? area.rightHmm() : area.leftHmm();
        int y = edge.fromTop() ? area.topHmm() : area.bottomHmm();
        line(
                Layer.DATUM,
                new Dot(x, area.bottomHmm() + edge.cornerHmm()),
                new Dot(x, area.topHmm() - edge.cornerHmm()));
        line(
                Layer.DATUM,
                new Dot(area.leftHmm() + edge.cornerHmm(), y),
                new Dot(area.rightHmm() - edge.cornerHmm(), y));
        letter(new Dot(x + (edge.fromRight() ? -350 : 350), y + (edge.fromTop() ? -LETTER_HMM : LETTER_HMM)), "A");
        letter(new Dot(x + (edge.fromRight() ? -LETTER_HMM : LETTER_HMM), y + (edge.fromTop() ? -350 : 350)), "B");
    }

    /** A datum's letter in its frame, as ISO 5459 has it. */
    private void letter(Dot at, String letter) {
        marks.add(new Mark.Rounded(Layer.WORDS, Area.round(at, 500, 500), 0));
        text(at, 350, Mark.Stand.MIDDLE, letter);
    }

    private void patch(Plan.Patch patch) {
        Area area = patch.area();
        boolean upright = area.heightHmm() > area.widthHmm();
        Mark.Text name;
        if (patch.layer() == Layer.BESIDE) {
            Dot over = new Dot(area.centre().xHmm(), area.topHmm() + 200);
            name = new Mark.Text(Layer.WORDS, over, SMALL_HMM, Mark.Stand.MIDDLE, patch.name());
        } else if (upright) {
            Dot beside = new Dot(area.leftHmm() + 200, area.centre().yHmm());
            name = new Mark.Text(Layer.WORDS, beside, SMALL_HMM, Mark.Stand.MIDDLE_UP, patch.name());
        } else {
            Dot low = new Dot(area.centre().xHmm(), area.bottomHmm() + 200);
            name = new Mark.Text(Layer.WORDS, low, SMALL_HMM, Mark.Stand.MIDDLE, patch.name());
        }
        marks.add(new Mark.Rounded(patch.layer(), area, 0));
        marks.add(name);
        if (patch.layer() == Layer.KEEP_OUT) {
            Area words = name.about();
            if (upright) {
                hatch(area, area.bottomHmm(), Math.max(area.bottomHmm(), words.bottomHmm()), true);
                hatch(area, Math.min(area.topHmm(), words.topHmm()), area.topHmm(), true);
            } else {
                hatch(area, area.leftHmm(), Math.max(area.leftHmm(), words.leftHmm()), false);
                hatch(area, Math.min(area.rightHmm(), words.rightHmm()), area.rightHmm(), false);
            }
        }
    }

    /** Lines at 45 degrees over a part of a rectangle: between two heights, or from left to right. */
    private void hatch(Area whole, int fromHmm, int toHmm, boolean upright) {
        Area area = upright
                ? new Area(whole.leftHmm(), fromHmm, whole.rightHmm(), toHmm)
                : new Area(fromHmm, whole.bottomHmm(), toHmm, whole.topHmm());
        for (int c = area.leftHmm() - area.heightHmm() + HATCH_HMM; c < area.rightHmm(); c += HATCH_HMM) {
            int fromX = Math.max(c, area.leftHmm());
            int toX = Math.min(c + area.heightHmm(), area.rightHmm());
            if (fromX < toX) {
                line(
                        Layer.KEEP_OUT,
                        new Dot(fromX, area.bottomHmm() + fromX - c),
                        new Dot(toX, area.bottomHmm() + toX - c));
            }
        }
    }

    private void existing(Hole hole) {
        int half = hole.reach().widthHmm() / 2;
        marks.add(new Mark.Circle(Layer.EXISTING, hole.centre(), 2 * half));
        cross(hole.centre(), half + PAST_HMM, half + PAST_HMM);
    }

    private void cross(Dot at, int acrossHmm, int upHmm) {
        line(Layer.CENTRE, at.plus(-acrossHmm, 0), at.plus(acrossHmm, 0));
        line(Layer.CENTRE, at.plus(0, -upHmm), at.plus(0, upHmm));
    }

    private void hole(Hole hole) {
        marks.add(hole.mark());
        Area reach = hole.reach();
        boolean screw = hole.tag().purpose().isForScrew();
        cross(hole.centre(), reach.widthHmm() / 2 + PAST_HMM, reach.heightHmm() / 2 + PAST_HMM);
        if (screw) {
            Dot at = new Dot(reach.rightHmm() + 80, reach.topHmm() + 100);
            text(at, SMALL_HMM, Mark.Stand.STARTS, hole.tag().id());
            return;
        }
        boolean narrow = reach.widthHmm() < NARROW_HMM;
        Dot at = narrow
                ? new Dot(reach.rightHmm() + 300, reach.topHmm())
                : hole.centre().plus(200, 400);
        Mark.Text size = new Mark.Text(
                Layer.WORDS, at, 250, Mark.Stand.STARTS, hole.tag().id() + "  " + hole.size());
        marks.add(size);
        words.add(size.about());
        text(
                at.plus(0, narrow ? -400 : -800),
                SMALL_HMM,
                Mark.Stand.STARTS,
                hole.tag().what());
        if (hole instanceof Hole.Window window && !window.isSlot()) {
            Dot first = new Dot(reach.leftHmm() + 2 * window.cornerHmm() + 200, reach.topHmm() - window.cornerHmm());
            corners(window, narrow ? at.plus(0, -750) : first);
        }
    }

    /** Holes that are drilled first, so that corners are round and a blade can turn. */
    private void corners(Hole.Window window, Dot words) {
        int radius = window.cornerHmm();
        Area middles = window.area().grown(-radius);
        for (int x : List.of(middles.leftHmm(), middles.rightHmm())) {
            for (int y : List.of(middles.bottomHmm(), middles.topHmm())) {
                Dot at = new Dot(x, y);
                marks.add(new Mark.Circle(Layer.DRILL, at, 2 * radius));
                cross(at, radius / 2, radius / 2);
            }
        }
        text(
                words,
                SMALL_HMM,
                Mark.Stand.STARTS,
                "4 x \u00d8" + Hundredths.text(2 * radius) + ": drill the corners first");
    }
}

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

    /** Room that dimensions take outside the edge. */
    private static final int ROOM_HMM = 2600;

    /** How far centre lines reach past what they are the middle of; ISO 128-2 wants a little. */
    private static final int PAST_HMM = 250;

    private static final int SMALL_HMM = 180;
    private static final int HATCH_HMM = 400;

    private final Plan plan;
    private final List<Mark> marks = new ArrayList<>();

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
        Area bounds = plan.edge().area();
        List<Area> wholes = new ArrayList<>();
        for (Plan.Patch patch : plan.patches()) {
            bounds = bounds.with(patch.area());
        }
        for (Hole hole : plan.holes()) {
            wholes.add(hole.reach());
            bounds = bounds.with(hole.reach());
        }
        plan.existing().forEach(h -> wholes.add(h.reach()));
        Area room = new Area(
                bounds.leftHmm() - ROOM_HMM,
                bounds.bottomHmm() - ROOM_HMM,
                bounds.rightHmm() + PAST_HMM,
                bounds.topHmm() + PAST_HMM);
        return new Drawing(drawing.marks, room, wholes);
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
        letter(new Dot(x + (edge.fromRight() ? -350 : 350), area.topHmm() - 1200), "A");
        letter(new Dot(area.rightHmm() - 1200, y + (edge.fromTop() ? -350 : 350)), "B");
    }

    /** A datum's letter in its frame, as ISO 5459 has it. */
    private void letter(Dot at, String letter) {
        marks.add(new Mark.Rounded(Layer.WORDS, Area.round(at, 500, 500), 0));
        text(at, 350, Mark.Stand.MIDDLE, letter);
    }

    private void patch(Plan.Patch patch) {
        Area area = patch.area();
        marks.add(new Mark.Rounded(patch.layer(), area, 0));
        if (patch.layer() == Layer.KEEP_OUT) {
            hatch(area);
        }
        boolean upright = area.heightHmm() > area.widthHmm();
        if (patch.layer() == Layer.BESIDE) {
            text(new Dot(area.centre().xHmm(), area.topHmm() + 200), SMALL_HMM, Mark.Stand.MIDDLE, patch.name());
        } else if (upright) {
            text(new Dot(area.leftHmm() + 200, area.centre().yHmm()), SMALL_HMM, Mark.Stand.MIDDLE_UP, patch.name());
        } else {
            text(new Dot(area.centre().xHmm(), area.bottomHmm() + 200), SMALL_HMM, Mark.Stand.MIDDLE, patch.name());
        }
    }

    /** Lines at 45 degrees over a rectangle. */
    private void hatch(Area area) {
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
        text(hole.centre().plus(200, 400), 250, Mark.Stand.STARTS, hole.tag().id() + "  " + hole.size());
        text(
                hole.centre().plus(200, -400),
                SMALL_HMM,
                Mark.Stand.STARTS,
                hole.tag().what());
        if (hole instanceof Hole.Window window && !window.isSlot()) {
            corners(window);
        }
    }

    /** Holes that are drilled first, so that corners are round and a blade can turn. */
    private void corners(Hole.Window window) {
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
                new Dot(middles.leftHmm() + radius + 200, middles.topHmm()),
                SMALL_HMM,
                Mark.Stand.STARTS,
                "4 x \u00d8" + Hundredths.text(2 * radius) + ": drill the corners first");
    }
}

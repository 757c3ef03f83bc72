package loopwright.workshop.template;

import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import loopwright.workshop.drawing.Layer;

/** How far the drawing of a plan reaches, and what of it is worth paper. */
record PlanExtent(Plan plan) {

    /** Room that dimensions take outside the edge. */
    private static final int ROOM_HMM = 2100;

    /** What is printed round a hole: a rim as wide as it should be, and a little more. */
    private static final int ROUND_HMM = 1200;

    /** All of it. */
    Area bounds() {
        Area bounds = plan.edge().area();
        for (Plan.Patch patch : plan.patches()) {
            bounds = bounds.with(patch.area());
        }
        for (Hole hole : plan.holes()) {
            bounds = bounds.with(hole.reach());
        }
        boolean right = plan.edge().fromRight();
        boolean top = plan.edge().fromTop();
        return new Area(
                bounds.leftHmm() - (right ? PlanDrawing.PAST_HMM : ROOM_HMM),
                bounds.bottomHmm() - (top ? PlanDrawing.PAST_HMM : ROOM_HMM),
                bounds.rightHmm() + (right ? ROOM_HMM : PlanDrawing.PAST_HMM),
                bounds.topHmm() + (top ? ROOM_HMM : PlanDrawing.PAST_HMM));
    }

    /** From the dimensions and both datum edges to the farthest hole and what lies round it. */
    Area needed() {
        Area bounds = bounds();
        Area edge = plan.edge().area();
        Dot corner = new Dot(
                plan.edge().fromRight() ? bounds.rightHmm() : bounds.leftHmm(),
                plan.edge().fromTop() ? bounds.topHmm() : bounds.bottomHmm());
        Area out = Area.between(corner, corner)
                .with(Area.round(plan.edge().datum(), 2 * PlanDrawing.PAST_HMM, 2 * PlanDrawing.PAST_HMM));
        for (Hole hole : plan.holes()) {
            out = out.with(hole.reach().grown(ROUND_HMM));
        }
        for (Hole hole : plan.existing()) {
            out = out.with(hole.reach().grown(ROUND_HMM));
        }
        for (Plan.Patch patch : plan.patches()) {
            out = patch.layer() == Layer.BESIDE ? out.with(patch.area().grown(PlanDrawing.PAST_HMM)) : out;
        }
        Area all = plan.edge().layer() == Layer.CUT ? out.with(edge.grown(PlanDrawing.PAST_HMM)) : out;
        return all.common(bounds).orElse(bounds);
    }
}

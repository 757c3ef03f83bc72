package loopwright.workshop.template;

import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;

/**
 * How much sheet stays between two edges, hundredths of a millimetre; negative where they cross.
 *
 * <p>Round to round and round to window exact. Two windows are taken for their rectangles, which understates what stays
 * at their corners.
 */
final class Metal {

    private Metal() {}

    /** Between two holes. */
    static double between(Hole one, Hole other) {
        if (one instanceof Hole.Round a && other instanceof Hole.Round b) {
            return a.centre().distanceHmm(b.centre()) - (a.diameterHmm() + b.diameterHmm()) / 2.0;
        }
        if (one instanceof Hole.Round a && other instanceof Hole.Window b) {
            return toRounded(b.area(), b.cornerHmm(), a.centre()) - a.diameterHmm() / 2.0;
        }
        if (one instanceof Hole.Window && other instanceof Hole.Round) {
            return between(other, one);
        }
        return between(one.reach(), other.reach());
    }

    /** Between two rectangles. */
    static double between(Area one, Area other) {
        double x = Math.max(one.leftHmm() - other.rightHmm(), other.leftHmm() - one.rightHmm());
        double y = Math.max(one.bottomHmm() - other.topHmm(), other.bottomHmm() - one.topHmm());
        return x > 0 && y > 0 ? Math.sqrt(x * x + y * y) : Math.max(x, y);
    }

    /** Between a hole and a rectangle. */
    static double between(Hole hole, Area area) {
        if (hole instanceof Hole.Round round) {
            return toRounded(area, 0, round.centre()) - round.diameterHmm() / 2.0;
        }
        return between(hole.reach(), area);
    }

    /** Signed distance of a point from the edge of a rectangle with round corners: negative inside. */
    private static double toRounded(Area area, int cornerHmm, Dot dot) {
        double midX = (area.leftHmm() + area.rightHmm()) / 2.0;
        double midY = (area.bottomHmm() + area.topHmm()) / 2.0;
        double x = Math.abs(dot.xHmm() - midX) - (area.widthHmm() / 2.0 - cornerHmm);
        double y = Math.abs(dot.yHmm() - midY) - (area.heightHmm() / 2.0 - cornerHmm);
        double outX = Math.max(x, 0);
        double outY = Math.max(y, 0);
        return Math.sqrt(outX * outX + outY * outY) + Math.min(Math.max(x, y), 0) - cornerHmm;
    }
}

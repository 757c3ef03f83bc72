package loopwright.oracle.brute;

import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Shell;
import loopwright.oracle.OracleCase;

/** How far apart two boxes have to be along an axis: their need, and what tight places or the best case add to it. */
final class BruteApart {

    /** What is asked beyond the need. */
    enum Ask {
        /** Nothing. */
        NOMINAL,
        /** 2 mm or the worst case, whichever is more. */
        NO_TIGHT,
        /** The worst case less. */
        BEST_CASE
    }

    private final Ask ask;
    private final Fault fault;
    private final Len[] inside;

    private BruteApart(OracleCase question, Ask ask, Fault fault) {
        Shell.Interior interior = question.chassis().shell().interior();
        this.ask = ask;
        this.fault = fault;
        this.inside = new Len[] {Len.of(interior.widthMm()), Len.of(interior.depthMm()), Len.of(interior.heightMm())};
    }

    /** What the brief asks. */
    static BruteApart of(OracleCase question, Fault fault) {
        boolean refused = question.brief().limits().mods().noTightPlaces() && fault != Fault.TIGHT_ALLOWED;
        return new BruteApart(question, refused ? Ask.NO_TIGHT : Ask.NOMINAL, fault);
    }

    /** Everything off in our favour. */
    static BruteApart atBestCase(OracleCase question, Fault fault) {
        return new BruteApart(question, Ask.BEST_CASE, fault);
    }

    boolean apart(BruteBox a, BruteBox b) {
        int need = Math.max(a.needHmm, b.needHmm);
        for (int axis = 0; axis < 3; axis++) {
            if (a.low[axis] - b.high[axis] >= need + beyond(a, b, axis)
                    || b.low[axis] - a.high[axis] >= need + beyond(b, a, axis)) {
                return true;
            }
        }
        return false;
    }

    /** What is asked beyond the need where one box is past the other. */
    private int beyond(BruteBox past, BruteBox before, int gapAxis) {
        int axis = fault == Fault.SPREAD_OF_NEXT_AXIS ? (gapAxis + 1) % 3 : gapAxis;
        boolean oneFromFarWall = (past.hungFrom == axis) != (before.hungFrom == axis);
        return beyond(past.lowOff[axis] + before.highOff[axis] + (oneFromFarWall ? inside[axis].offHalves() : 0));
    }

    boolean apart(BruteBox box, Face wall) {
        int axis = Xyz.of(wall.normal());
        boolean farWall = wall.isHigh() != (box.hungFrom == axis);
        int gap = wall.isHigh() ? inside[axis].hmm() - box.high[axis] : box.low[axis];
        int off = (wall.isHigh() ? box.highOff : box.lowOff)[axis] + (farWall ? inside[axis].offHalves() : 0);
        return gap >= box.needHmm + beyond(off);
    }

    private int beyond(int offHalves) {
        int worst = (offHalves + 1) / 2;
        int tight = fault == Fault.TIGHT_OFF_BY_ONE ? 199 : 200;
        return switch (ask) {
            case NOMINAL -> 0;
            case NO_TIGHT -> Math.max(tight, worst);
            case BEST_CASE -> -worst;
        };
    }
}

package loopwright.oracle.choco;

import loopwright.catalog.basis.Axis;

/** A box: from and to along x, y, z; for stacks relative to the pattern's centre. */
record CBox(Ends x, Ends y, Ends z, boolean room, int needHmm) {

    static CBox of(Ends x, Ends y, Ends z, boolean room, int needHmm) {
        return new CBox(x, y, z, room, needHmm);
    }

    Ends along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    int from(Axis axis) {
        return along(axis).from().at();
    }

    int to(Axis axis) {
        return along(axis).to().at();
    }

    /** Two ends along an axis. */
    record Ends(CEdge from, CEdge to) {
        static Ends sorted(CEdge one, CEdge other) {
            return one.compareTo(other) <= 0 ? new Ends(one, other) : new Ends(other, one);
        }
    }
}

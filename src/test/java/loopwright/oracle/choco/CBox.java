package loopwright.oracle.choco;

import loopwright.catalog.basis.Axis;

/** A box: from and to along x, y, z, in hundredths; for stacks relative to the pattern's centre. */
record CBox(int x0, int x1, int y0, int y1, int z0, int z1, boolean room, int needHmm) {

    static CBox of(Ends x, Ends y, Ends z, boolean room, int needHmm) {
        return new CBox(x.from(), x.to(), y.from(), y.to(), z.from(), z.to(), room, needHmm);
    }

    int from(Axis axis) {
        return switch (axis) {
            case X -> x0;
            case Y -> y0;
            case Z -> z0;
        };
    }

    int to(Axis axis) {
        return switch (axis) {
            case X -> x1;
            case Y -> y1;
            case Z -> z1;
        };
    }

    /** Two ends along an axis, put in order. */
    record Ends(int from, int to) {
        static Ends sorted(int one, int other) {
            return new Ends(Math.min(one, other), Math.max(one, other));
        }
    }
}

package loopwright.oracle.brute;

import loopwright.catalog.basis.Axis;

/** Where an axis stands in x, y, z. */
final class Xyz {
    private Xyz() {}

    static int of(Axis axis) {
        return switch (axis) {
            case X -> 0;
            case Y -> 1;
            case Z -> 2;
        };
    }
}

package loopwright.tolerance;

import java.util.List;

/**
 * The margin of two boxes, or of a box and a wall: they are apart when they are apart along any axis.
 *
 * @param axes the axes along which they may be apart; those along which they never are may be left out
 */
public record BoxMargin(List<AxisMargin> axes) {

    /** Copies. */
    public BoxMargin {
        axes = List.copyOf(axes);
    }

    /** Whether every dimension in it is known. */
    boolean isKnown() {
        return axes.stream().allMatch(AxisMargin::isKnown);
    }

    /** The chance that they are apart, each axis taken by itself; only for what is known. */
    double chance() {
        double none = 1;
        for (AxisMargin axis : axes) {
            none *= 1 - axis.probability();
        }
        return 1 - none;
    }
}

package loopwright.tolerance;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The margin of two bodies: where they come nearest, and the chance that they do not meet anywhere.
 *
 * <p>Units: hundredths of a millimetre.
 */
public final class PairMargin {

    private final AxisMargin nearest;
    private final int worstLeftHmm;
    private final List<BoxMargin> boxes;
    private final FitProbability probabilities;

    /**
     * A margin.
     *
     * @param nearest the margin of the two boxes that come nearest, along the axis that keeps them apart
     * @param boxes every two boxes that may meet when dimensions are off; those that never do may be left out
     */
    public PairMargin(AxisMargin nearest, List<BoxMargin> boxes, FitProbability probabilities) {
        this(nearest, nearest.nominalHmm() - nearest.worstCaseHmm(), boxes, probabilities);
    }

    /**
     * The same where another axis than the widest keeps more at worst.
     *
     * @param worstLeftHmm what is left along the best axis when every dimension is off as badly as it may be
     */
    public PairMargin(AxisMargin nearest, int worstLeftHmm, List<BoxMargin> boxes, FitProbability probabilities) {
        this.nearest = nearest;
        this.worstLeftHmm = worstLeftHmm;
        this.boxes = List.copyOf(boxes);
        this.probabilities = probabilities;
    }

    /** The margin where they come nearest. */
    public AxisMargin nearest() {
        return nearest;
    }

    /** Every two boxes that may meet when dimensions are off. */
    List<BoxMargin> boxes() {
        return boxes;
    }

    /** What is left of it when every dimension is off as badly as it may be, along the axis that then keeps most. */
    public int worstLeftHmm() {
        return worstLeftHmm;
    }

    /** The chance that they do not meet; absent where a dimension is not known. */
    public OptionalDouble probability() {
        return nearest.isKnown() ? probabilities.ofAll(boxes) : OptionalDouble.empty();
    }

    /** The chance that no pair of several meets; dimensions that they share are off together. */
    public static OptionalDouble probabilityOfAll(List<PairMargin> pairs) {
        if (pairs.isEmpty()) {
            return OptionalDouble.of(1);
        }
        Stream<BoxMargin> boxes = pairs.stream().flatMap(p -> p.boxes.stream());
        return pairs.stream().allMatch(p -> p.nearest.isKnown())
                ? pairs.get(0).probabilities.ofAll(boxes.toList())
                : OptionalDouble.empty();
    }
}

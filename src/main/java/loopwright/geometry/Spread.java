package loopwright.geometry;

import java.util.Map;
import java.util.TreeMap;
import loopwright.quantity.Dimension;

/** How far a difference of two sums may be off when each dimension is off as badly as it may be. */
public final class Spread {

    private Spread() {}

    /**
     * Worst case of {@code a − b}: the sum of the spreads of what is left after equal names cancel.
     *
     * <p>Unit: hundredths of a millimetre, a half rounded up.
     */
    public static int worstCaseHmm(Sum a, Sum b) {
        Map<String, Integer> halves = new TreeMap<>();
        Map<String, Dimension> dimensions = new TreeMap<>();
        for (Sum.Term term : a.plus(-1, b).terms()) {
            halves.merge(term.name(), term.halves(), Integer::sum);
            dimensions.put(term.name(), term.dimension());
        }
        int sum = 0;
        for (Map.Entry<String, Integer> entry : halves.entrySet()) {
            Dimension dimension = dimensions.getOrDefault(entry.getKey(), Dimension.UNKNOWN);
            sum += Math.abs(entry.getValue()) * dimension.plusMinusHmm();
        }
        return (sum + 1) / 2;
    }
}

package loopwright.geometry;

import java.util.HashMap;
import java.util.Map;
import loopwright.quantity.Dimension;

/** How far a difference of two sums may be off when each dimension is off as badly as it may be. */
public final class Spread {

    private Spread() {}

    /** A dimension of a name: parts of one name but of different size or ± do not cancel. */
    private record Named(String name, Dimension dimension) {}

    /**
     * Worst case of {@code a − b}: the sum of the spreads of what is left after equal dimensions cancel.
     *
     * <p>Unit: hundredths of a millimetre, a half rounded up.
     */
    public static int worstCaseHmm(Sum a, Sum b) {
        Map<Named, Integer> halves = new HashMap<>();
        for (Sum.Term term : a.plus(-1, b).terms()) {
            halves.merge(new Named(term.name(), term.dimension()), term.halves(), Integer::sum);
        }
        int sum = 0;
        for (Map.Entry<Named, Integer> entry : halves.entrySet()) {
            sum += Math.abs(entry.getValue()) * entry.getKey().dimension().plusMinusHmm();
        }
        return (sum + 1) / 2;
    }
}

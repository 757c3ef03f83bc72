package loopwright.tolerance;

import java.util.List;

/**
 * A margin in numbers: nominal, and so much of each deviation; it is kept when the sum is not below 0.
 *
 * <p>Units: hundredths of a millimetre.
 *
 * @param probability that it is kept, taken by itself
 * @param shares by name
 */
record Form(int nominalHmm, double probability, List<Share> shares) {

    Form {
        shares = List.copyOf(shares);
    }

    /**
     * How much of a deviation is in it.
     *
     * @param number among all deviations met so far: only to tell them apart
     * @param scaleHmm for one standard deviation, or for the half width of a rectangular one
     */
    record Share(int number, String name, double scaleHmm, boolean rectangular) {}

    int[] numbers() {
        return shares.stream().mapToInt(Share::number).toArray();
    }

    /** The deviations and how much of each, without the nominal: forms that share it differ by a length only. */
    String direction() {
        StringBuilder out = new StringBuilder();
        shares.forEach(
                s -> out.append(s.number()).append(':').append(s.scaleHmm()).append(','));
        return out.toString();
    }

    /** The same in names, which do not depend on what was met before. */
    String text() {
        StringBuilder out = new StringBuilder().append(nominalHmm);
        shares.forEach(s -> out.append(' ').append(s.name()).append(s.scaleHmm()));
        return out.toString();
    }
}

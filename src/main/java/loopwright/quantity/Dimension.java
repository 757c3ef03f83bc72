package loopwright.quantity;

/**
 * One length of a part or a chassis: its value, how far it may be off, and how it is known.
 *
 * <p>Units: hundredths of a millimetre. An unknown dimension counts as zero in a sum, and whatever is built from it is
 * marked unknown (design: "would fit with that dimension at zero").
 *
 * @param valueHmm the nominal value; 0 when unknown
 * @param plusMinusHmm half width of the band the true value lies in, ≥ 0
 * @param known how the value is known
 * @param distribution how the true value is spread over the band
 */
public record Dimension(int valueHmm, int plusMinusHmm, Known known, Distribution distribution) {

    /** What a bare number in a file is taken to be off by: ±0.5 mm, the smallest spread the trade believes in. */
    public static final int DEFAULT_PLUS_MINUS_HMM = 50;

    /** An unknown dimension. */
    public static final Dimension UNKNOWN = new Dimension(0, 0, Known.UNKNOWN);

    /** Checks the spread and that an unknown value is zero. */
    public Dimension {
        if (plusMinusHmm < 0) {
            throw new IllegalArgumentException("plusMinusHmm must be >= 0 but was " + plusMinusHmm);
        }
        if (known == Known.UNKNOWN && valueHmm != 0) {
            throw new IllegalArgumentException("an unknown dimension has no value but had " + valueHmm);
        }
    }

    /** A dimension whose ± is two standard deviations, which is what is meant where nothing is said. */
    public Dimension(int valueHmm, int plusMinusHmm, Known known) {
        this(valueHmm, plusMinusHmm, known, Distribution.NORMAL);
    }

    /** A bare number from a file: the datasheet's word, off by the default spread. */
    public static Dimension ofHmm(int valueHmm) {
        return new Dimension(valueHmm, DEFAULT_PLUS_MINUS_HMM, Known.DATASHEET);
    }

    /** Whether the value has to be measured first. */
    public boolean isUnknown() {
        return known == Known.UNKNOWN;
    }
}

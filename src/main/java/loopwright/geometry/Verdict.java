package loopwright.geometry;

/**
 * What a margin means to the builder; common practice, no source.
 *
 * <p>Units: hundredths of a millimetre.
 */
public enum Verdict {
    /** They meet. */
    CLASH,
    /** Under 2 mm, or the worst case meets: dry fit before buying or painting. */
    TIGHT,
    /** Under 5 mm, or under 10 to a tube or cable. */
    CLOSE,
    /** Room enough. */
    CLEAR;

    /** A smaller margin is tight. */
    public static final int TIGHT_BELOW_HMM = 200;

    private static final int CLOSE_BELOW_HMM = 500;
    private static final int CLOSE_BELOW_AT_CABLES_HMM = 1000;

    /**
     * The verdict on a margin.
     *
     * @param marginHmm nominal margin
     * @param worstCaseHmm margin when every dimension is off as badly as it may be
     * @param atCable whether one of the two is a tube, a cable or a plug
     */
    public static Verdict of(int marginHmm, int worstCaseHmm, boolean atCable) {
        if (marginHmm < 0) {
            return CLASH;
        }
        if (marginHmm < TIGHT_BELOW_HMM || worstCaseHmm < 0) {
            return TIGHT;
        }
        return marginHmm < (atCable ? CLOSE_BELOW_AT_CABLES_HMM : CLOSE_BELOW_HMM) ? CLOSE : CLEAR;
    }
}

package loopwright.fit;

import loopwright.catalog.brief.Brief;
import loopwright.geometry.Spread;
import loopwright.geometry.Sum;
import loopwright.geometry.Verdict;

/**
 * How far apart the bodies of a pair have to be along an axis, beyond their need.
 *
 * <p>Unit: hundredths of a millimetre.
 */
public enum Strictness {
    /** No more than the need: what fits at nominal dimensions. */
    NOMINAL(0),
    /** So far that the place is not tight: 2 mm, or as much as the axis's dimensions may be off, if that is more. */
    NO_TIGHT(Verdict.TIGHT_BELOW_HMM),
    /** Less, by as much as the axis's dimensions may be off: would it fit if they were all off in our favour? */
    BEST_CASE(-PairTable.NO_LIMIT);

    private final int leastMarginHmm;

    Strictness(int leastMarginHmm) {
        this.leastMarginHmm = leastMarginHmm;
    }

    /** What a brief asks for. */
    static Strictness of(Brief brief) {
        return brief.limits().mods().noTightPlaces() ? NO_TIGHT : NOMINAL;
    }

    /** No pair that is kept can have a smaller margin than this. */
    int leastMarginHmm() {
        return leastMarginHmm;
    }

    /** What is asked beyond the need where {@code upper − lower} is the gap; negative where less is enough. */
    int beyondNeedHmm(Sum upper, Sum lower) {
        return switch (this) {
            case NOMINAL -> 0;
            case NO_TIGHT -> Math.max(Verdict.TIGHT_BELOW_HMM, Spread.worstCaseHmm(upper, lower));
            case BEST_CASE -> -Spread.worstCaseHmm(upper, lower);
        };
    }
}

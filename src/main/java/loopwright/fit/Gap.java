package loopwright.fit;

import java.util.OptionalDouble;
import loopwright.geometry.Verdict;
import loopwright.tolerance.PairMargin;

/**
 * The distance between two things in a layout.
 *
 * @param one what one of them is
 * @param other what the other is
 * @param clearanceHmm how far apart they are
 * @param needHmm how far apart they want to be
 * @param margin what may be off in it
 */
public record Gap(String one, String other, int clearanceHmm, int needHmm, PairMargin margin, boolean atCable) {

    /** Clearance less need. */
    public int marginHmm() {
        return clearanceHmm - needHmm;
    }

    /** The margin when every dimension is off as badly as it may be. */
    public int worstCaseHmm() {
        return margin.worstLeftHmm();
    }

    /** The margin less the root sum square of what may be off. */
    public int rssHmm() {
        return marginHmm() - margin.nearest().rssHmm();
    }

    /** The chance that the two keep their need; absent where a dimension is not known. */
    public OptionalDouble probability() {
        return margin.probability();
    }

    /** What the margin means. */
    public Verdict verdict() {
        return Verdict.of(marginHmm(), worstCaseHmm(), atCable);
    }
}

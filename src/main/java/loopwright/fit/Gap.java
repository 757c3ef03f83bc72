package loopwright.fit;

import loopwright.geometry.Verdict;

/**
 * The distance between two things in a layout.
 *
 * @param one what one of them is
 * @param other what the other is
 * @param clearanceHmm how far apart they are
 * @param needHmm how far apart they want to be
 * @param worstCaseHmm the margin when every dimension is off as badly as it may be
 */
public record Gap(String one, String other, int clearanceHmm, int needHmm, int worstCaseHmm, boolean atCable) {

    /** Clearance less need. */
    public int marginHmm() {
        return clearanceHmm - needHmm;
    }

    /** What that means. */
    public Verdict verdict() {
        return Verdict.of(marginHmm(), worstCaseHmm, atCable);
    }
}

package loopwright.oracle.cases;

import java.util.List;
import java.util.SplittableRandom;
import loopwright.quantity.Dimension;

/** Seeded chance for generated cases; lengths in hundredths of a millimetre. */
final class Dice {
    private final SplittableRandom random;
    private final int scale;
    private final String unknownTag;
    private final int gapHmm;

    /**
     * Starts the dice of a case.
     *
     * @param scale how many hundredths a small difference of one is: 1 for tiny cases
     * @param gapHmm how far apart things are drawn
     */
    Dice(long seed, int scale, List<String> tags, int gapHmm) {
        this.gapHmm = gapHmm;
        this.random = new SplittableRandom(seed * 7919 + scale);
        this.scale = scale;
        String tag = tags.get(between(0, tags.size() - 1));
        this.unknownTag = chance(8) ? tag : "none";
    }

    int gapHmm() {
        return gapHmm;
    }

    int between(int from, int to) {
        return random.nextInt(from, to + 1);
    }

    boolean chance(int percent) {
        return between(1, 100) <= percent;
    }

    <T> T oneOf(List<T> list) {
        return list.get(between(0, list.size() - 1));
    }

    /** A small difference between two multiples of the scale, any hundredth. */
    int small(int from, int to) {
        return between(from * scale, to * scale);
    }

    /** A dimension, unknown if the case has drawn its tag. */
    Dimension dim(int hmm, String tag) {
        return tag.equals(unknownTag) ? Dimension.UNKNOWN : Dimension.ofHmm(hmm);
    }

    static Dimension hmm(int hmm) {
        return Dimension.ofHmm(hmm);
    }
}

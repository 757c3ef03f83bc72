package loopwright.workshop.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the tiles of a drawing start along one axis: as few as cover it, each overlapping the next, such that whatever is
 * not longer than a tile is whole on one of them.
 *
 * <p>Greedy from the low end: a tile starts where the one before ends, less the overlap, or earlier, at the first thing
 * that none so far holds. No later start would do, so no fewer tiles would.
 *
 * @param startsHmm where each starts, ascending
 * @param lengthHmm how long each is
 */
public record Tiling(List<Integer> startsHmm, int lengthHmm) {

    /** Copies. */
    public Tiling {
        startsHmm = List.copyOf(startsHmm);
    }

    /** From one coordinate to another. */
    public record Reach(int fromHmm, int toHmm) {}

    /**
     * Covers a reach.
     *
     * @param wholes what should be whole on one tile; longer ones than a tile are left out
     * @throws IllegalArgumentException if a tile is not longer than the overlap
     */
    public static Tiling of(Reach all, List<Reach> wholes, int lengthHmm, int overlapHmm) {
        if (lengthHmm <= overlapHmm || overlapHmm < 0) {
            throw new IllegalArgumentException(
                    "a tile of " + lengthHmm + " hundredths must be longer than its overlap of " + overlapHmm);
        }
        List<Integer> starts = new ArrayList<>();
        int start = all.fromHmm();
        starts.add(start);
        while (start + lengthHmm < all.toHmm()) {
            int end = start + lengthHmm;
            int next = end - overlapHmm;
            for (Reach whole : wholes) {
                boolean goes = whole.toHmm() - whole.fromHmm() <= lengthHmm;
                if (goes && whole.toHmm() > end && whole.fromHmm() > start) {
                    next = Math.min(next, whole.fromHmm());
                }
            }
            start = next;
            starts.add(start);
        }
        return new Tiling(starts, lengthHmm);
    }

    /** The same, with what tiles cover too much shared out before and after, if that takes no more tiles. */
    static Tiling centred(Reach all, List<Reach> wholes, int lengthHmm, int overlapHmm) {
        Tiling greedy = of(all, wholes, lengthHmm, overlapHmm);
        int spare = greedy.reach(greedy.count() - 1).toHmm() - all.toHmm();
        Tiling centred = of(new Reach(all.fromHmm() - spare / 2, all.toHmm()), wholes, lengthHmm, overlapHmm);
        return centred.count() == greedy.count() ? centred : greedy;
    }

    /** How many tiles. */
    public int count() {
        return startsHmm.size();
    }

    /** What a tile covers. */
    public Reach reach(int index) {
        return new Reach(startsHmm.get(index), startsHmm.get(index) + lengthHmm);
    }
}

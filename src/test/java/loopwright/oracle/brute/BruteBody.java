package loopwright.oracle.brute;

import java.util.List;
import java.util.Set;
import loopwright.catalog.basis.Face;

/**
 * A body and what it may touch.
 *
 * @param id the raw id of an obstruction, removable or added body, else empty
 */
record BruteBody(Sort sort, String id, boolean unknown, List<BruteBox> boxes, Set<Face> against, Set<String> touches) {

    enum Sort {
        CHASSIS,
        ON_BOARD,
        IN_PLACE,
        STACK
    }

    boolean countsWith(BruteBody other) {
        if (sort == other.sort && (sort == Sort.CHASSIS || sort == Sort.ON_BOARD)) {
            return false;
        }
        return !(sort == Sort.CHASSIS && other.touches.contains(id))
                && !(other.sort == Sort.CHASSIS && touches.contains(other.id));
    }

    boolean clearOf(BruteBody other, boolean roomsCount, BruteApart apart) {
        if (!countsWith(other)) {
            return true;
        }
        for (BruteBox a : boxes) {
            for (BruteBox b : other.boxes) {
                boolean counts = roomsCount || !a.room || !b.room;
                if (counts && !apart.apart(a, b)) {
                    return false;
                }
            }
        }
        return true;
    }

    boolean clearOf(Face wall, BruteApart apart) {
        if (sort == Sort.CHASSIS || against.contains(wall)) {
            return true;
        }
        return boxes.stream().allMatch(box -> apart.apart(box, wall));
    }

    /** The smallest margin of the box pairs that count; very large if none does. */
    int marginHmm(BruteBody other) {
        int least = Integer.MAX_VALUE;
        if (countsWith(other)) {
            for (BruteBox a : boxes) {
                for (BruteBox b : other.boxes) {
                    if (!a.room || !b.room) {
                        least = Math.min(least, a.clearanceHmm(b) - Math.max(a.needHmm, b.needHmm));
                    }
                }
            }
        }
        return least;
    }

    /** The smallest margin of its boxes to a wall; very large if it does not count. */
    int marginHmm(Face wall, int[] insideHmm) {
        int least = Integer.MAX_VALUE;
        if (sort != Sort.CHASSIS && !against.contains(wall)) {
            int axis = Xyz.of(wall.normal());
            for (BruteBox box : boxes) {
                int clearance = wall.isHigh() ? insideHmm[axis] - box.high[axis] : box.low[axis];
                least = Math.min(least, clearance - box.needHmm);
            }
        }
        return least;
    }
}

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
}

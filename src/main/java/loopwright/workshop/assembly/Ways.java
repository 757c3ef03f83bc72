package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;

/**
 * The ways on which boxes can leave: straight out through an open side, or first a step along another axis, then out.
 *
 * <p>Only moves along the axes are known, in one or two legs; what only a tilt would free has no way here. Unit: hundredths of a
 * millimetre. Boxes that overlap where they stand (what is plugged into each other) never block each other.
 *
 * @param blockers for each way the pieces in it, as bits; none that holds another
 */
record Ways(List<Long> blockers) {

    /** Far beyond any chassis. */
    private static final int OUTSIDE_HMM = 200_000;

    Ways {
        blockers = List.copyOf(blockers);
    }

    /** The room that is moved in: the interior, the sides that are open, what never moves. */
    record Hall(Reach x, Reach y, Reach z, Set<Face> open, List<SpaceBox> builtIn) {
        Reach along(Axis axis) {
            return switch (axis) {
                case X -> x;
                case Y -> y;
                case Z -> z;
            };
        }
    }

    /**
     * The ways of some boxes.
     *
     * @param own bit of the piece they belong to
     * @param pieces matter of every piece, bit by bit
     */
    static Ways of(List<SpaceBox> boxes, long own, Hall hall, List<List<SpaceBox>> pieces) {
        List<Long> out = new ArrayList<>();
        for (Face side : hall.open()) {
            add(out, List.of(out(boxes, side)), boxes, own, hall, pieces);
            for (Face step : Face.values()) {
                if (step.normal() != side.normal()) {
                    for (int by : steps(boxes, step, hall, pieces)) {
                        List<SpaceBox> moved = moved(boxes, step.normal(), step.isHigh() ? by : -by);
                        List<SpaceBox> swept = swept(boxes, step, by);
                        add(out, List.of(swept, out(moved, side)), boxes, own, hall, pieces);
                    }
                }
            }
        }
        return new Ways(least(out));
    }

    private static void add(
            List<Long> out,
            List<List<SpaceBox>> legs,
            List<SpaceBox> rest,
            long own,
            Hall hall,
            List<List<SpaceBox>> pieces) {
        for (List<SpaceBox> leg : legs) {
            for (int k = 0; k < leg.size(); k++) {
                for (SpaceBox wall : hall.builtIn()) {
                    if (overlap(leg.get(k), wall) && rest.stream().noneMatch(r -> overlap(r, wall))) {
                        return;
                    }
                }
            }
        }
        long mask = 0;
        for (int p = 0; p < pieces.size(); p++) {
            List<SpaceBox> other = pieces.get(p);
            boolean together = rest.stream().anyMatch(r -> other.stream().anyMatch(o -> overlap(r, o)));
            boolean hit = legs.stream()
                    .anyMatch(leg -> leg.stream().anyMatch(l -> other.stream().anyMatch(o -> overlap(l, o))));
            if (hit && !together) {
                mask |= 1L << p;
            }
        }
        out.add(mask & ~own);
    }

    /** Steps after which the boxes just clear something, and the longest that the interior allows. */
    private static Set<Integer> steps(List<SpaceBox> boxes, Face step, Hall hall, List<List<SpaceBox>> pieces) {
        Axis axis = step.normal();
        int room = Integer.MAX_VALUE;
        for (SpaceBox box : boxes) {
            int left = step.isHigh()
                    ? hall.along(axis).to() - box.along(axis).to()
                    : box.along(axis).from() - hall.along(axis).from();
            room = Math.min(room, left);
        }
        Set<Integer> out = new TreeSet<>();
        if (room <= 0) {
            return out;
        }
        out.add(room);
        List<SpaceBox> others = new ArrayList<>(hall.builtIn());
        pieces.forEach(others::addAll);
        for (SpaceBox other : others) {
            for (SpaceBox box : boxes) {
                int by = step.isHigh()
                        ? other.along(axis).to() - box.along(axis).from()
                        : box.along(axis).to() - other.along(axis).from();
                if (by > 0 && by < room) {
                    out.add(by);
                }
            }
        }
        return out;
    }

    private static List<SpaceBox> out(List<SpaceBox> boxes, Face side) {
        return boxes.stream()
                .map(b ->
                        stretched(b, side.normal(), side.isHigh() ? 0 : -OUTSIDE_HMM, side.isHigh() ? OUTSIDE_HMM : 0))
                .toList();
    }

    private static List<SpaceBox> swept(List<SpaceBox> boxes, Face step, int by) {
        return boxes.stream()
                .map(b -> stretched(b, step.normal(), step.isHigh() ? 0 : -by, step.isHigh() ? by : 0))
                .toList();
    }

    private static List<SpaceBox> moved(List<SpaceBox> boxes, Axis axis, int by) {
        return boxes.stream().map(b -> stretched(b, axis, by, by)).toList();
    }

    private static SpaceBox stretched(SpaceBox b, Axis axis, int from, int to) {
        return new SpaceBox(
                b.what(),
                b.room(),
                b.needHmm(),
                axis == Axis.X ? more(b.x(), from, to) : b.x(),
                axis == Axis.Y ? more(b.y(), from, to) : b.y(),
                axis == Axis.Z ? more(b.z(), from, to) : b.z());
    }

    private static Reach more(Reach reach, int from, int to) {
        return new Reach(reach.from() + from, reach.to() + to);
    }

    static boolean overlap(SpaceBox a, SpaceBox b) {
        for (Axis axis : Axis.values()) {
            if (a.along(axis).to() <= b.along(axis).from()
                    || b.along(axis).to() <= a.along(axis).from()) {
                return false;
            }
        }
        return true;
    }

    private static List<Long> least(List<Long> all) {
        List<Long> out = new ArrayList<>();
        all.stream()
                .sorted(Comparator.comparing((Long m) -> Long.bitCount(m)).thenComparing(m -> m))
                .forEach(m -> {
                    if (out.stream().noneMatch(o -> (o & ~m) == 0)) {
                        out.add(m);
                    }
                });
        return out;
    }

    /** Whether there is no way at all, even in an empty chassis: only a tilt may do it. */
    boolean none() {
        return blockers.isEmpty();
    }

    /** Whether a way is free of what is in. */
    boolean free(long in) {
        return none() || blockers.stream().anyMatch(b -> (b & in) == 0);
    }
}

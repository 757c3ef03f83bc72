package loopwright.workshop.assembly;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;

/**
 * The ways on which boxes can leave: straight out through an open face, or first a step along another axis, then out.
 *
 * <p>Only moves along the axes are known, in one or two legs; what only a tilt would free has no way here. Unit: hundredths of a
 * millimetre.
 *
 * @param pieces matter of every piece, bit by bit
 */
record WayFinder(Hall hall, List<List<SpaceBox>> pieces) {

    /** Copies. */
    WayFinder {
        pieces = List.copyOf(pieces);
    }

    /** The same with more that stays where it is. */
    WayFinder with(List<SpaceBox> more) {
        List<SpaceBox> all = new ArrayList<>(hall.builtIn());
        all.addAll(more);
        return new WayFinder(new Hall(hall.x(), hall.y(), hall.z(), hall.open(), all), pieces);
    }

    /** Of something that stands there: boxes that overlap it where it stands are plugged into it and do not block it. */
    Ways of(List<SpaceBox> boxes) {
        return ways(boxes, boxes);
    }

    /** Of a hand: what overlaps it is in its way. */
    Ways ofHand(SpaceBox hand) {
        return ways(List.of(hand), List.of());
    }

    /** Of what lifts straight off through a face. */
    Ways off(List<SpaceBox> boxes, Face face) {
        List<Long> out = new ArrayList<>();
        add(out, List.of(Boxes.out(boxes, face)), boxes);
        return new Ways(out);
    }

    /** Of a driver: none where its shaft or hand is in a wall or in what is built in. */
    Ways of(Driving driving) {
        List<SpaceBox> shaft = List.of(driving.shaft());
        if (driving.outside().isPresent()) {
            List<SpaceBox> all = List.of(driving.shaft(), driving.hand());
            return Ways.one(hit(List.of(Boxes.out(all, driving.outside().get())), List.of()));
        }
        boolean walled = !hall.holds(driving.shaft()) || !hall.holds(driving.hand());
        if (walled || Boxes.anyOverlap(shaft, hall.builtIn())) {
            return Ways.NONE;
        }
        return ofHand(driving.hand()).and(hit(List.of(shaft), List.of()));
    }

    private Ways ways(List<SpaceBox> boxes, List<SpaceBox> rest) {
        List<Long> out = new ArrayList<>();
        for (Face side : open()) {
            add(out, List.of(Boxes.out(boxes, side)), rest);
            for (Face step : Face.values()) {
                if (step.normal() != side.normal()) {
                    for (int by : steps(boxes, step)) {
                        List<SpaceBox> swept = Boxes.swept(boxes, step, by);
                        add(out, List.of(swept, Boxes.out(Boxes.moved(boxes, step, by), side)), rest);
                    }
                }
            }
        }
        return new Ways(out);
    }

    private Set<Face> open() {
        return hall.open().isEmpty() ? Set.of() : EnumSet.copyOf(hall.open());
    }

    private void add(List<Long> out, List<List<SpaceBox>> legs, List<SpaceBox> rest) {
        for (SpaceBox wall : hall.builtIn()) {
            boolean hit = legs.stream().anyMatch(leg -> Boxes.anyOverlap(leg, List.of(wall)));
            if (hit && !Boxes.anyOverlap(rest, List.of(wall))) {
                return;
            }
        }
        out.add(hit(legs, rest));
    }

    private long hit(List<List<SpaceBox>> legs, List<SpaceBox> rest) {
        long mask = 0;
        for (int p = 0; p < pieces.size(); p++) {
            List<SpaceBox> other = pieces.get(p);
            if (legs.stream().anyMatch(leg -> Boxes.anyOverlap(leg, other)) && !Boxes.anyOverlap(rest, other)) {
                mask |= 1L << p;
            }
        }
        return mask;
    }

    /** Steps after which the boxes just clear something, and the longest that the interior allows. */
    private Set<Integer> steps(List<SpaceBox> boxes, Face step) {
        Set<Integer> out = new TreeSet<>();
        int room = hall.roomHmm(boxes, step);
        if (room <= 0) {
            return out;
        }
        out.add(room);
        List<SpaceBox> others = new ArrayList<>(hall.builtIn());
        pieces.forEach(others::addAll);
        for (SpaceBox other : others) {
            for (SpaceBox box : boxes) {
                int by = step.isHigh()
                        ? other.along(step.normal()).to()
                                - box.along(step.normal()).from()
                        : box.along(step.normal()).to()
                                - other.along(step.normal()).from();
                if (by > 0 && by < room) {
                    out.add(by);
                }
            }
        }
        return out;
    }
}

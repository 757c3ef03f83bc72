package loopwright.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Shell;
import loopwright.geometry.Clearance;
import loopwright.geometry.SpaceBox;
import loopwright.quantity.IntervalSet;

/**
 * What is already decided about each pair of bodies, whatever the positions: they never meet, always meet, or it
 * depends. Made on first use and kept.
 */
final class PairTable {

    /** What is known of a pair, as strict as the search is. */
    enum Status {
        /** Apart at every position in range. */
        ALWAYS,
        /** Apart at no position in range. */
        NEVER,
        /** It depends on the positions. */
        DEPENDS
    }

    /** A pair's status, and the disjunctions that are still open when it depends. */
    record Link(Status status, List<int[]> open) {
        private static final Link ALWAYS = new Link(Status.ALWAYS, List.of());
        private static final Link NEVER = new Link(Status.NEVER, List.of());
    }

    private static final IntervalSet ORIGIN = IntervalSet.of(0, 0);

    private final Sides sides;
    private final Sides plain;
    private final Strictness strictness;
    private final Bodies bodies;
    private final Shell.Interior interior;
    private final LinkGrid hangToBody = new LinkGrid();
    private final LinkGrid hangToHang = new LinkGrid();
    private final Map<Integer, Link> hangToWalls = new HashMap<>();
    private final Map<Long, Integer> bodyMargins = new HashMap<>();

    PairTable(Bodies bodies, int mounts, Strictness strictness) {
        this.bodies = bodies;
        this.interior = bodies.chassis().shell().interior();
        this.strictness = strictness;
        this.plain = new Sides(mounts, bodies.chassis(), Strictness.NOMINAL);
        this.sides = strictness == Strictness.NOMINAL ? plain : new Sides(mounts, bodies.chassis(), strictness);
    }

    /** An odd number near 2^64 over the golden ratio: multiplying by it loses nothing and mixes well. */
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private static long key(int a, int b) {
        // Spread over all bits: Long.hashCode would fold two small numbers onto each other.
        return ((long) a << 32 | b) * SPREAD;
    }

    Link walls(Hang hang) {
        return hangToWalls.computeIfAbsent(hang.id(), k -> decide(wallSides(hang, strictness), List.of(hang)));
    }

    Link link(Hang hang, int body) {
        return hangToBody.get(hang.id(), body, () -> decide(sides(hang, body, strictness), List.of(hang)));
    }

    Link link(Hang a, Hang b) {
        return hangToHang.get(a.id(), b.id(), () -> decide(sides(a, b, strictness), List.of(a, b)));
    }

    /** How strict the search is. */
    Strictness strictness() {
        return strictness;
    }

    private Sides as(Strictness asked) {
        return asked == strictness ? sides : plain;
    }

    /** What keeps a stack apart from a body, as strictly as the search or at nominal dimensions. */
    List<int[]> sides(Hang hang, int body, Strictness asked) {
        return as(asked).between(hang.occupant(), Optional.of(hang.frame()), bodies.get(body), Optional.empty());
    }

    /** What keeps a stack apart from a body that has no number, as strictly as the search. */
    List<int[]> sides(Hang hang, Occupant still) {
        return sides.between(hang.occupant(), Optional.of(hang.frame()), still, Optional.empty());
    }

    /** What keeps two stacks apart, as strictly as the search or at nominal dimensions. */
    List<int[]> sides(Hang a, Hang b, Strictness asked) {
        return as(asked).between(a.occupant(), Optional.of(a.frame()), b.occupant(), Optional.of(b.frame()));
    }

    /** What keeps a stack off the walls, as strictly as the search or at nominal dimensions. */
    List<int[]> wallSides(Hang hang, Strictness asked) {
        return as(asked).walls(hang.occupant(), Optional.of(hang.frame()));
    }

    /** What keeps a stack off one wall, as strictly as the search. */
    List<int[]> wallSides(Hang hang, Face wall) {
        return sides.wall(hang.occupant(), Optional.of(hang.frame()), wall);
    }

    /** What is decided about a stack and one wall. */
    Link wall(Hang hang, Face wall) {
        return decide(wallSides(hang, wall), List.of(hang));
    }

    /** The variables' domains when these stacks hang; everything else stands at 0. */
    IntervalSet[] domains(List<Hang> hangs) {
        IntervalSet[] out = new IntervalSet[sides.variables()];
        java.util.Arrays.fill(out, ORIGIN);
        for (Hang hang : hangs) {
            out[2 * hang.frame().index()] = hang.range().along();
            out[2 * hang.frame().index() + 1] = hang.range().aside();
        }
        return out;
    }

    private Link decide(List<int[]> disjunctions, List<Hang> hangs) {
        IntervalSet[] domains = domains(hangs);
        List<int[]> open = new ArrayList<>();
        for (int[] disjunction : disjunctions) {
            Status status = status(disjunction, domains);
            if (status == Status.NEVER) {
                return Link.NEVER;
            }
            if (status == Status.DEPENDS) {
                open.add(disjunction);
            }
        }
        if (open.isEmpty()) {
            return Link.ALWAYS;
        }
        return new Positions(domains, open).feasible(0) ? new Link(Status.DEPENDS, List.copyOf(open)) : Link.NEVER;
    }

    private static Status status(int[] disjunction, IntervalSet[] domains) {
        boolean possible = false;
        for (int at = 0; at < disjunction.length; at += 3) {
            IntervalSet i = domains[disjunction[at]];
            IntervalSet j = domains[disjunction[at + 1]];
            int c = disjunction[at + 2];
            if (j.min() - i.max() >= c) {
                return Status.ALWAYS;
            }
            possible |= disjunction[at] != disjunction[at + 1] && j.max() - i.min() >= c;
        }
        return possible ? Status.DEPENDS : Status.NEVER;
    }

    /** The margin of two bodies that do not slide, or {@link #REFUSED}; a pair that does not count has a huge one. */
    int margin(int a, int b) {
        return bodyMargins.computeIfAbsent(key(a, b), k -> margin(bodies.get(a), bodies.get(b)));
    }

    /** The same for bodies that have no number. */
    int margin(Occupant a, Occupant b) {
        return keeps(sides.between(a, Optional.empty(), b, Optional.empty())) ? plainMargin(a, b) : REFUSED;
    }

    /** A margin larger than any machine. */
    static final int NO_LIMIT = 1_000_000;

    /** Less than any margin: the bodies are not as far apart as the search asks. */
    static final int REFUSED = Integer.MIN_VALUE;

    /** Whether each of these has a side that holds where nothing slides. */
    private static boolean keeps(List<int[]> disjunctions) {
        for (int[] disjunction : disjunctions) {
            boolean kept = false;
            for (int at = 2; at < disjunction.length; at += 3) {
                kept |= disjunction[at] <= 0;
            }
            if (!kept) {
                return false;
            }
        }
        return true;
    }

    /** The margin of two bodies that do not slide, however close they come. */
    int plainMargin(int a, int b) {
        return plainMargin(bodies.get(a), bodies.get(b));
    }

    /** The margin of a body that does not slide to the walls, however close it comes. */
    int plainWallMargin(int body) {
        int least = NO_LIMIT;
        for (Face wall : Face.values()) {
            least = Math.min(least, plainWallMargin(bodies.get(body), wall));
        }
        return least;
    }

    private static int plainMargin(Occupant a, Occupant b) {
        int least = NO_LIMIT;
        if (a.pairsWith(b)) {
            for (SpaceBox boxA : a.boxes()) {
                for (SpaceBox boxB : b.boxes()) {
                    if (!boxA.room() || !boxB.room()) {
                        int need = Math.max(boxA.needHmm(), boxB.needHmm());
                        least = Math.min(least, Clearance.hmm(boxA, boxB) - need);
                    }
                }
            }
        }
        return least;
    }

    /** The margin of a body that does not slide to the walls, or {@link #REFUSED}. */
    int wallMargin(int body) {
        return wallMargin(bodies.get(body));
    }

    /** The same for a body that has no number. */
    int wallMargin(Occupant occupant) {
        int least = NO_LIMIT;
        for (Face wall : Face.values()) {
            least = Math.min(least, wallMargin(occupant, wall));
        }
        return least;
    }

    /** The same for one wall. */
    int wallMargin(int body, Face wall) {
        return wallMargin(bodies.get(body), wall);
    }

    private int wallMargin(Occupant occupant, Face wall) {
        return keeps(sides.wall(occupant, Optional.empty(), wall)) ? plainWallMargin(occupant, wall) : REFUSED;
    }

    private int plainWallMargin(Occupant occupant, Face wall) {
        int least = NO_LIMIT;
        if (occupant.pairsWith(wall)) {
            for (SpaceBox box : occupant.boxes()) {
                least = Math.min(least, wallDistance(box, wall) - box.needHmm());
            }
        }
        return least;
    }

    private int wallDistance(SpaceBox box, Face wall) {
        Axis axis = wall.normal();
        int size = MountFrame.interior(interior, axis).valueHmm();
        return wall.isHigh() ? size - box.along(axis).to() : box.along(axis).from();
    }
}

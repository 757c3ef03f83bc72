package loopwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Chassis;
import loopwright.fit.Occupant.Group;
import loopwright.geometry.BodyBox;
import loopwright.geometry.Edges;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.Spread;
import loopwright.geometry.Sum;
import loopwright.geometry.Verdict;

/**
 * Measures every pair of things as they stand, by plain subtraction. It knows nothing of the models, the kernel or the
 * pair table, and is run on every layout before it is shown.
 *
 * <p>Unit: hundredths of a millimetre.
 */
final class Recheck {

    private final Chassis chassis;
    private final Closeness closeness = new Closeness();

    Recheck(Chassis chassis) {
        this.chassis = chassis;
    }

    /** Every gap that counts; for each pair of bodies only the smallest. */
    List<Gap> gaps(List<Standing> bodies) {
        return among(bodies).stream().flatMap(List::stream).toList();
    }

    /** The gaps among bodies that do not slide, body by body: to the walls, then to those after it. */
    List<List<Gap>> among(List<Standing> still) {
        List<List<Gap>> out = new ArrayList<>();
        for (int i = 0; i < still.size(); i++) {
            List<Gap> gaps = new ArrayList<>();
            for (Face wall : Face.values()) {
                addWall(gaps, still.get(i), wall);
            }
            for (int j = i + 1; j < still.size(); j++) {
                addPair(gaps, still.get(i), still.get(j));
            }
            out.add(gaps);
        }
        return out;
    }

    /** Every gap that counts, when the gaps among those that do not slide are known already. */
    List<Gap> gaps(List<Standing> still, List<List<Gap>> amongStill, List<Standing> sliding) {
        List<Gap> out = new ArrayList<>();
        for (int i = 0; i < still.size(); i++) {
            out.addAll(amongStill.get(i));
            for (Standing one : sliding) {
                addPair(out, still.get(i), one);
            }
        }
        among(sliding).forEach(out::addAll);
        return out;
    }

    private void addPair(List<Gap> out, Standing a, Standing b) {
        if (boltedTogether(a.occupant(), b.occupant())) {
            return;
        }
        Closeness.Pair pair = closeness.pair(a, b);
        int least = Integer.MAX_VALUE;
        int leastA = -1;
        int leastB = -1;
        for (int i = 0; i < a.occupant().boxes().size(); i++) {
            for (int j = 0; j < b.occupant().boxes().size(); j++) {
                boolean bothRoom = a.occupant().boxes().get(i).room()
                        && b.occupant().boxes().get(j).room();
                if (!bothRoom) {
                    int margin = clearance(a, i, b, j) - need(a, i, b, j);
                    pair.add(a, i, b, j, need(a, i, b, j));
                    leastA = margin < least ? i : leastA;
                    leastB = margin < least ? j : leastB;
                    least = Math.min(least, margin);
                }
            }
        }
        if (leastA >= 0) {
            out.add(gap(pair, a, leastA, b, leastB));
        }
    }

    private static int clearance(Standing a, int boxA, Standing b, int boxB) {
        int best = Integer.MIN_VALUE;
        for (Axis axis : Axis.values()) {
            best = Math.max(best, b.from(boxB, axis) - a.to(boxA, axis));
            best = Math.max(best, a.from(boxA, axis) - b.to(boxB, axis));
        }
        return best;
    }

    private static int need(Standing a, int boxA, Standing b, int boxB) {
        return Math.max(
                a.occupant().boxes().get(boxA).needHmm(),
                b.occupant().boxes().get(boxB).needHmm());
    }

    private static boolean boltedTogether(Occupant a, Occupant b) {
        if (a.group() == Group.BUILT_IN) {
            return b.group() == Group.BUILT_IN || b.touches().contains(a.name());
        }
        if (b.group() == Group.BUILT_IN) {
            return a.touches().contains(b.name());
        }
        return a.group() == Group.ON_BOARD && b.group() == Group.ON_BOARD;
    }

    private static Gap gap(Closeness.Pair pair, Standing a, int boxA, Standing b, int boxB) {
        SpaceBox one = a.occupant().boxes().get(boxA);
        SpaceBox other = b.occupant().boxes().get(boxB);
        int need = need(a, boxA, b, boxB);
        return new Gap(
                a.name(boxA),
                b.name(boxB),
                clearance(a, boxA, b, boxB),
                need,
                pair.nearest(a, boxA, b, boxB, need),
                one.room() || other.room());
    }

    private void addWall(List<Gap> out, Standing body, Face wall) {
        Occupant occupant = body.occupant();
        if (!countsWith(body, wall)) {
            return;
        }
        Sum size = MountFrame.wall(chassis, wall.normal());
        Closeness.Pair pair = closeness.pair(body, wall);
        int least = Integer.MAX_VALUE;
        int nearest = 0;
        for (int i = 0; i < occupant.boxes().size(); i++) {
            int margin = toWall(body, i, wall, size) - occupant.boxes().get(i).needHmm();
            pair.add(body, i, wall, size, margin);
            nearest = margin < least ? i : nearest;
            least = Math.min(least, margin);
        }
        SpaceBox box = occupant.boxes().get(nearest);
        String name = wall.name().toLowerCase(Locale.ROOT) + (wall == Face.FLOOR || wall == Face.ROOF ? "" : " wall");
        out.add(new Gap(
                body.name(nearest),
                name,
                least + box.needHmm(),
                box.needHmm(),
                pair.nearest(body, nearest, wall, size, least),
                box.room()));
    }

    private static int toWall(Standing body, int box, Face wall, Sum size) {
        return wall.isHigh() ? size.valueHmm() - body.to(box, wall.normal()) : body.from(box, wall.normal());
    }

    private static int farther(Standing a, int boxA, Standing b, int boxB, Axis axis) {
        return Math.max(b.from(boxB, axis) - a.to(boxA, axis), a.from(boxA, axis) - b.to(boxB, axis));
    }

    /** How far the larger of the two distances along an axis may be off. */
    private static int spread(Standing a, int boxA, Standing b, int boxB, Axis axis) {
        Edges ea = edges(a, boxA, axis);
        Edges eb = edges(b, boxB, axis);
        return b.from(boxB, axis) - a.to(boxA, axis) >= a.from(boxA, axis) - b.to(boxB, axis)
                ? Spread.worstCaseHmm(eb.from(), ea.to())
                : Spread.worstCaseHmm(ea.from(), eb.to());
    }

    /** Whether none of some bodies has a tight place to a wall or to any body, box by box. */
    boolean noneTight(List<Standing> some, List<Standing> all) {
        for (Standing body : some) {
            for (Standing other : all) {
                if (!body.equals(other) && !boltedTogether(body.occupant(), other.occupant()) && tight(body, other)) {
                    return false;
                }
            }
            if (tightToWalls(body)) {
                return false;
            }
        }
        return true;
    }

    private boolean tightToWalls(Standing body) {
        for (Face wall : Face.values()) {
            for (int i = 0; i < body.occupant().boxes().size() && countsWith(body, wall); i++) {
                if (isTight(body, i, wall)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean tight(Standing a, Standing b) {
        for (int i = 0; i < a.occupant().boxes().size(); i++) {
            for (int j = 0; j < b.occupant().boxes().size(); j++) {
                boolean bothRoom = a.occupant().boxes().get(i).room()
                        && b.occupant().boxes().get(j).room();
                if (!bothRoom && tight(a, i, b, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean tight(Standing a, int boxA, Standing b, int boxB) {
        int need = need(a, boxA, b, boxB);
        for (Axis axis : Axis.values()) {
            int margin = farther(a, boxA, b, boxB, axis) - need;
            int worst = margin - spread(a, boxA, b, boxB, axis);
            if (Verdict.of(margin, worst, false).compareTo(Verdict.TIGHT) > 0) {
                return false;
            }
        }
        return true;
    }

    private static Edges edges(Standing body, int box, Axis axis) {
        BodyBox from = body.occupant().body().boxes().get(box);
        return from.along(axis);
    }

    private static boolean countsWith(Standing body, Face wall) {
        return body.occupant().group() != Group.BUILT_IN
                && !body.occupant().against().contains(wall);
    }

    private boolean isTight(Standing body, int box, Face wall) {
        Axis axis = wall.normal();
        Sum size = MountFrame.wall(chassis, axis);
        Edges edges = edges(body, box, axis);
        int spread =
                wall.isHigh() ? Spread.worstCaseHmm(size, edges.to()) : Spread.worstCaseHmm(edges.from(), Sum.ZERO);
        int margin =
                toWall(body, box, wall, size) - body.occupant().boxes().get(box).needHmm();
        return Verdict.of(margin, margin - spread, false).compareTo(Verdict.TIGHT) <= 0;
    }
}

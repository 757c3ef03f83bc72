package loopwright.fit;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.geometry.BodyBox;
import loopwright.geometry.Edges;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import loopwright.tolerance.AxisMargin;
import loopwright.tolerance.BoxMargin;
import loopwright.tolerance.FitProbability;
import loopwright.tolerance.PairMargin;

/**
 * Gathers, while two bodies are measured, what may be off between their boxes. What no spread can bring together is left out.
 *
 * <p>Unit: hundredths of a millimetre.
 */
final class Closeness {

    /** No deviation beyond so many times a ± counts: six standard deviations of a normal one. */
    private static final int BEYOND = 3;

    private final FitProbability probabilities = new FitProbability();
    private final IdentityHashMap<BodyBox, Integer> reaches = new IdentityHashMap<>();

    /** The margins of two bodies so far. */
    final class Pair {
        private final String name;
        private final List<BoxMargin> boxes = new ArrayList<>();

        private Pair(String name) {
            this.name = name;
        }

        /** Two boxes as they stand. */
        void add(Standing a, int boxA, Standing b, int boxB, int needHmm) {
            int reach = reach(box(a, boxA)) + reach(box(b, boxB)) + BEYOND * AxisMargin.FLOOR_HMM;
            List<AxisMargin> axes = new ArrayList<>();
            for (Axis axis : Axis.values()) {
                int aBelow = b.from(boxB, axis) - a.to(boxA, axis) - needHmm;
                int bBelow = a.from(boxA, axis) - b.to(boxB, axis) - needHmm;
                if (aBelow > reach || bBelow > reach) {
                    return;
                }
                if (aBelow > -reach) {
                    axes.add(along(
                            axis,
                            aBelow,
                            edges(b, boxB, axis).from(),
                            edges(a, boxA, axis).to()));
                }
                if (bBelow > -reach) {
                    axes.add(along(
                            axis,
                            bBelow,
                            edges(a, boxA, axis).from(),
                            edges(b, boxB, axis).to()));
                }
            }
            boxes.add(new BoxMargin(axes));
        }

        /** A box and a wall. */
        void add(Standing body, int box, Face wall, Sum size, int marginHmm) {
            if (marginHmm <= reach(box(body, box)) + reach(size) + BEYOND * AxisMargin.FLOOR_HMM) {
                boxes.add(new BoxMargin(List.of(wall(body, box, wall, size, marginHmm))));
            }
        }

        private AxisMargin wall(Standing body, int box, Face wall, Sum size, int marginHmm) {
            Edges edges = edges(body, box, wall.normal());
            return wall.isHigh()
                    ? along(wall.normal(), marginHmm, size, edges.to())
                    : along(wall.normal(), marginHmm, edges.from(), Sum.ZERO);
        }

        private AxisMargin along(Axis axis, int marginHmm, Sum upper, Sum lower) {
            return AxisMargin.between(marginHmm, upper, lower, name + " " + axis);
        }

        /** The margin of the two, the nearest boxes being these. */
        PairMargin nearest(Standing a, int boxA, Standing b, int boxB, int needHmm) {
            Optional<AxisMargin> widest = Optional.empty();
            int worstLeft = Integer.MIN_VALUE;
            for (Axis axis : Axis.values()) {
                int aBelow = b.from(boxB, axis) - a.to(boxA, axis) - needHmm;
                int bBelow = a.from(boxA, axis) - b.to(boxB, axis) - needHmm;
                int most = Math.max(aBelow, bBelow);
                boolean wider = most > widest.map(AxisMargin::nominalHmm).orElse(Integer.MIN_VALUE);
                if (wider || most > worstLeft) {
                    Edges ea = edges(a, boxA, axis);
                    Edges eb = edges(b, boxB, axis);
                    AxisMargin one = aBelow >= bBelow
                            ? along(axis, aBelow, eb.from(), ea.to())
                            : along(axis, bBelow, ea.from(), eb.to());
                    widest = wider ? Optional.of(one) : widest;
                    worstLeft = Math.max(worstLeft, most - one.worstCaseHmm());
                }
            }
            return new PairMargin(widest.orElseThrow(), worstLeft, boxes, probabilities);
        }

        /** The margin to a wall, the nearest box being this one. */
        PairMargin nearest(Standing body, int box, Face wall, Sum size, int marginHmm) {
            return new PairMargin(wall(body, box, wall, size, marginHmm), boxes, probabilities);
        }
    }

    /** Two bodies: the same two whatever stands first. */
    Pair pair(Standing a, Standing b) {
        String one = a.occupant().body().id();
        String other = b.occupant().body().id();
        return new Pair(one.compareTo(other) < 0 ? one + " " + other : other + " " + one);
    }

    /** A body and a wall. */
    Pair pair(Standing body, Face wall) {
        return new Pair(body.occupant().body().id() + " " + wall.name().toLowerCase(Locale.ROOT));
    }

    private static BodyBox box(Standing body, int box) {
        return body.occupant().body().boxes().get(box);
    }

    private static Edges edges(Standing body, int box, Axis axis) {
        return box(body, box).along(axis);
    }

    /** As far as any face of a box may be off for all that counts. */
    private int reach(BodyBox box) {
        return reaches.computeIfAbsent(box, b -> {
            int most = 0;
            for (Axis axis : Axis.values()) {
                most = Math.max(most, reach(b.along(axis).from()));
                most = Math.max(most, reach(b.along(axis).to()));
            }
            return most;
        });
    }

    private static int reach(Sum face) {
        int halves = 0;
        for (Sum.Term term : face.terms()) {
            Dimension dimension = term.dimension();
            int times = dimension.distribution() == Distribution.RECTANGULAR ? 1 : BEYOND;
            halves += Math.abs(term.halves()) * dimension.plusMinusHmm() * times;
        }
        return (halves + 1) / 2;
    }
}

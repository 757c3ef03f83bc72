package loopwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.fit.conflict.FactSet;
import loopwright.geometry.Edges;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.Sum;

/**
 * How much a candidate lacks for the pairs that it breaks, at the best positions that keep all others.
 *
 * <p>Unit: hundredths of a millimetre. The positions come from the kernel; what is told is measured on the boxes where they then
 * stand, and every pair that comes too close there has to be one that the candidate says it breaks.
 */
public final class Lacking {

    /** Nothing in a machine overlaps by more, 10 m. */
    private static final int LOWEST = -1_000_000;

    private final FactBook book;
    private final PairTable pairs;
    private final Bodies bodies;
    private final Strictness strictness;

    Lacking(Attempts attempts) {
        this.book = attempts.book();
        this.pairs = attempts.maker().pairs();
        this.bodies = attempts.maker().bodies();
        this.strictness = pairs.strictness();
    }

    /**
     * What a pair lacks.
     *
     * @param one what one of the two is: the stack, where there is one
     * @param other what the other is, or the wall
     * @param lackHmm how far they come too close, above 0
     * @param axis along which they come least too close
     * @param depth what a stack needs from its seat plane inwards and what is there, where that is what is short
     */
    public record Lack(Fact fact, String one, String other, int lackHmm, Axis axis, Optional<Depth> depth) {}

    /** Depth inwards from a seat plane that a stack needs, and that is there. */
    public record Depth(int neededHmm, int thereHmm) {}

    /** A pair that counts, and its margin where it stands. */
    private record Pair(int fact, Near near) {}

    /** The nearest of two bodies' boxes. */
    private record Near(String one, String other, int marginHmm, Axis axis, Optional<Depth> depth) {}

    /**
     * What a candidate lacks, pair by pair.
     *
     * @throws IllegalStateException if another pair than those it breaks comes too close: our own bug
     */
    List<Lack> of(Candidate candidate) {
        Map<Integer, Lack> out = new TreeMap<>();
        for (Pair pair : standing(candidate)) {
            if (pair.near().marginHmm() < 0) {
                if (!candidate.broken().has(pair.fact())) {
                    throw new IllegalStateException("a candidate that breaks " + book.facts(candidate.broken())
                            + " also breaks " + book.fact(pair.fact()).id());
                }
                Near near = pair.near();
                Lack lack = new Lack(
                        book.fact(pair.fact()), near.one(), near.other(), -near.marginHmm(), near.axis(), near.depth());
                out.merge(pair.fact(), lack, (a, b) -> a.lackHmm() >= b.lackHmm() ? a : b);
            }
        }
        return List.copyOf(out.values());
    }

    private List<Pair> standing(Candidate candidate) {
        int[] at = positions(candidate);
        List<Standing> all = new ArrayList<>();
        for (Hang hang : candidate.hangs()) {
            int along = 2 * hang.frame().index();
            all.add(Standing.at(hang, at[along], at[along + 1]));
        }
        int sliding = all.size();
        candidate.placed().bodies().forEach(b -> all.add(Standing.still(bodies.get(b))));
        int builtInFrom = all.size();
        candidate.builtIn().forEach(b -> all.add(Standing.still(bodies.get(b))));
        List<Pair> out = new ArrayList<>();
        for (int i = 0; i < builtInFrom; i++) {
            Optional<MountFrame> frame =
                    i < sliding ? Optional.of(candidate.hangs().get(i).frame()) : Optional.empty();
            addWalls(out, all.get(i), frame);
            for (int j = i + 1; j < all.size(); j++) {
                addPair(out, all.get(i), all.get(j), frame);
            }
        }
        return out;
    }

    private void addPair(List<Pair> out, Standing a, Standing b, Optional<MountFrame> frame) {
        if (a.occupant().pairsWith(b.occupant())) {
            near(a, b, frame)
                    .ifPresent(n -> out.add(new Pair(
                            book.clear(
                                    a.occupant().body().id(),
                                    b.occupant().body().id()),
                            n)));
        }
    }

    private Optional<Near> near(Standing a, Standing b, Optional<MountFrame> frame) {
        List<Near> all = new ArrayList<>();
        for (int i = 0; i < a.occupant().boxes().size(); i++) {
            for (int j = 0; j < b.occupant().boxes().size(); j++) {
                SpaceBox one = a.occupant().boxes().get(i);
                SpaceBox other = b.occupant().boxes().get(j);
                if (!one.room() || !other.room()) {
                    all.add(near(a, i, b, j, frame));
                }
            }
        }
        return all.stream().min(Comparator.comparingInt(Near::marginHmm));
    }

    private Near near(Standing a, int boxA, Standing b, int boxB, Optional<MountFrame> frame) {
        int need = Math.max(
                a.occupant().boxes().get(boxA).needHmm(),
                b.occupant().boxes().get(boxB).needHmm());
        int best = Integer.MIN_VALUE;
        int asked = need;
        Axis along = Axis.X;
        for (Axis axis : Axis.values()) {
            Edges ea = edges(a, boxA, axis);
            Edges eb = edges(b, boxB, axis);
            int above = b.from(boxB, axis) - a.to(boxA, axis);
            int below = a.from(boxA, axis) - b.to(boxB, axis);
            int beyond = above >= below
                    ? strictness.beyondNeedHmm(eb.from(), ea.to())
                    : strictness.beyondNeedHmm(ea.from(), eb.to());
            int margin = Math.max(above, below) - need - beyond;
            if (margin > best) {
                best = margin;
                asked = need + beyond;
                along = axis;
            }
        }
        Optional<Depth> depth = Optional.empty();
        if (frame.isPresent() && frame.get().normal() == along) {
            int plane = frame.get().seatPlane().valueHmm();
            boolean high = frame.get().panel().face().isHigh();
            int needed = (high ? plane - a.from(boxA, along) : a.to(boxA, along) - plane) + asked;
            int there = high ? plane - b.to(boxB, along) : b.from(boxB, along) - plane;
            depth = there - needed == best ? Optional.of(new Depth(needed, there)) : Optional.empty();
        }
        return new Near(a.name(boxA), b.name(boxB), best, along, depth);
    }

    private static Edges edges(Standing body, int box, Axis axis) {
        return body.occupant().body().boxes().get(box).along(axis);
    }

    private void addWalls(List<Pair> out, Standing body, Optional<MountFrame> frame) {
        for (Face wall : Face.values()) {
            if (body.occupant().pairsWith(wall)) {
                Axis axis = wall.normal();
                int size = MountFrame.interior(bodies.chassis().shell().interior(), axis)
                        .valueHmm();
                List<Near> all = new ArrayList<>();
                for (int i = 0; i < body.occupant().boxes().size(); i++) {
                    int distance = wall.isHigh() ? size - body.to(i, axis) : body.from(i, axis);
                    int need = body.occupant().boxes().get(i).needHmm() + beyondWall(body, i, wall);
                    all.add(new Near(
                            body.name(i),
                            wallName(wall),
                            distance - need,
                            axis,
                            depth(body, i, axis, frame, size, need)));
                }
                all.stream()
                        .min(Comparator.comparingInt(Near::marginHmm))
                        .ifPresent(n -> out.add(
                                new Pair(book.clear(body.occupant().body().id(), HangFacts.wall(wall)), n)));
            }
        }
    }

    private int beyondWall(Standing body, int box, Face wall) {
        Edges edges = edges(body, box, wall.normal());
        return wall.isHigh()
                ? strictness.beyondNeedHmm(MountFrame.wall(bodies.chassis(), wall.normal()), edges.to())
                : strictness.beyondNeedHmm(edges.from(), Sum.ZERO);
    }

    private static Optional<Depth> depth(
            Standing body, int box, Axis axis, Optional<MountFrame> frame, int size, int need) {
        if (frame.isEmpty() || frame.get().normal() != axis) {
            return Optional.empty();
        }
        int plane = frame.get().seatPlane().valueHmm();
        boolean high = frame.get().panel().face().isHigh();
        int needed = (high ? plane - body.from(box, axis) : body.to(box, axis) - plane) + need;
        return Optional.of(new Depth(needed, high ? plane : size - plane));
    }

    static String wallName(Face wall) {
        String name = wall.name().toLowerCase(java.util.Locale.ROOT);
        return wall == Face.FLOOR || wall == Face.ROOF ? name : name + " wall";
    }

    /** The positions at which the broken pairs lack least, the others kept. */
    private int[] positions(Candidate candidate) {
        List<Hang> hangs = candidate.hangs();
        List<int[]> kept = new ArrayList<>();
        List<int[]> given = new ArrayList<>();
        for (int i = 0; i < hangs.size(); i++) {
            Hang hang = hangs.get(i);
            String stack = hang.occupant().body().id();
            for (Face wall : Face.values()) {
                sort(
                        candidate.broken(),
                        book.clear(stack, HangFacts.wall(wall)),
                        pairs.wallSides(hang, wall),
                        kept,
                        given);
            }
            List<Integer> others = new ArrayList<>(candidate.builtIn());
            others.addAll(candidate.placed().bodies());
            for (int body : others) {
                int fact = book.clear(stack, bodies.get(body).body().id());
                sort(candidate.broken(), fact, pairs.sides(hang, body, pairs.strictness()), kept, given);
            }
            for (int j = 0; j < i; j++) {
                int fact = book.clear(stack, hangs.get(j).occupant().body().id());
                sort(candidate.broken(), fact, pairs.sides(hangs.get(j), hang, pairs.strictness()), kept, given);
            }
        }
        int low = LOWEST;
        int high = 0;
        while (low < high) {
            int middle = high - (high - low) / 2;
            if (at(hangs, kept, given, middle).feasible(0)) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return at(hangs, kept, given, low)
                .least(0)
                .orElseThrow(() -> new IllegalStateException("a candidate stands nowhere: " + candidate.broken()));
    }

    private static void sort(FactSet broken, int fact, List<int[]> sides, List<int[]> kept, List<int[]> given) {
        (broken.has(fact) ? given : kept).addAll(sides);
    }

    private Positions at(List<Hang> hangs, List<int[]> kept, List<int[]> given, int marginHmm) {
        List<int[]> all = new ArrayList<>(kept);
        for (int[] sides : given) {
            int[] eased = sides.clone();
            for (int k = 2; k < eased.length; k += 3) {
                eased[k] += marginHmm;
            }
            all.add(eased);
        }
        return new Positions(pairs.domains(hangs), all);
    }
}

package loopwright.power.cable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.part.Plug;
import loopwright.catalog.standard.Cabling.PlugSize;
import loopwright.geometry.SpaceBox;
import org.junit.jupiter.api.Test;

/** Ways against every step of a fine grid; and by hand. Unit of the grid: one hundredth. */
class OpenWaysTest {

    private static final int SIZE = 9;
    private static final int SEEDS = 400;

    private static SpaceBox box(int x0, int x1, int y0, int y1, int z0, int z1) {
        return new SpaceBox(
                "box", false, 0, new SpaceBox.Reach(x0, x1), new SpaceBox.Reach(y0, y1), new SpaceBox.Reach(z0, z1));
    }

    private record Question(int keep, List<Obstacle> obstacles, PointHmm from, PointHmm to) {
        Optional<Way> asked() {
            return new OpenWays(new PointHmm(SIZE, SIZE, SIZE), keep, obstacles, List.of(from, to)).find(from, to);
        }

        /** The same without a hole. */
        Question without(Hole hole) {
            return new Question(
                    keep,
                    obstacles.stream()
                            .map(o -> new Obstacle(
                                    o.body(),
                                    o.box(),
                                    o.holes().stream()
                                            .filter(h -> !h.equals(hole))
                                            .toList()))
                            .toList(),
                    from,
                    to);
        }
    }

    private static Question question(int seed) {
        Random dice = new Random(seed);
        int keep = dice.nextInt(2);
        List<Obstacle> obstacles = new ArrayList<>();
        int count = 1 + dice.nextInt(5);
        for (int i = 0; i < count; i++) {
            if (dice.nextInt(3) > 0) {
                obstacles.add(sheet(dice, keep, i));
            } else {
                int x = dice.nextInt(SIZE - 2);
                int y = dice.nextInt(SIZE - 2);
                int z = dice.nextInt(SIZE - 2);
                obstacles.add(new Obstacle(
                        "b" + i,
                        box(x, x + 2 + dice.nextInt(3), y, y + 2 + dice.nextInt(3), z, z + 2 + dice.nextInt(3))));
            }
        }
        return new Question(keep, obstacles, point(dice, keep), point(dice, keep));
    }

    private static PointHmm point(Random dice, int keep) {
        int span = SIZE - 2 * keep + 1;
        return new PointHmm(keep + dice.nextInt(span), keep + dice.nextInt(span), keep + dice.nextInt(span));
    }

    /** A sheet one unit thick, mostly from wall to wall, with up to two holes. */
    private static Obstacle sheet(Random dice, int keep, int number) {
        Axis axis = List.of(Axis.values()).get(dice.nextInt(3));
        int at = 2 + dice.nextInt(SIZE - 4);
        int from = dice.nextInt(2);
        int to = SIZE - dice.nextInt(3);
        List<Hole> holes = new ArrayList<>();
        int count = dice.nextInt(3);
        for (int i = 0; i < count; i++) {
            PointHmm p = point(dice, Math.max(1, keep));
            PointHmm middle = switch (axis) {
                case X -> new PointHmm(at, p.y(), p.z());
                case Y -> new PointHmm(p.x(), at, p.z());
                case Z -> new PointHmm(p.x(), p.y(), at);
            };
            holes.add(new Hole("h" + number + i, "hole", middle, 1, 1));
        }
        SpaceBox box = switch (axis) {
            case X -> box(at, at + 1, from, to, 0, SIZE);
            case Y -> box(0, SIZE, at, at + 1, from, to);
            case Z -> box(from, to, 0, SIZE, at, at + 1);
        };
        return new Obstacle("s" + number, box, holes);
    }

    /** Breadth first over every point of the grid, steps of one unit, each asked of every box. */
    private static Optional<Integer> brute(Question q) {
        Map<PointHmm, Integer> known = new HashMap<>(Map.of(q.from(), 0));
        Deque<PointHmm> next = new ArrayDeque<>(List.of(q.from()));
        while (!next.isEmpty()) {
            PointHmm at = next.removeFirst();
            for (Heading heading : Heading.values()) {
                PointHmm there = at.moved(heading, 1);
                boolean inside = true;
                for (Axis axis : Axis.values()) {
                    inside &= there.along(axis) >= q.keep() && there.along(axis) <= SIZE - q.keep();
                }
                if (inside && !known.containsKey(there) && isOpen(q, at, there, heading.axis())) {
                    known.put(there, known.getOrDefault(at, 0) + 1);
                    next.addLast(there);
                }
            }
        }
        return Optional.ofNullable(known.get(q.to()));
    }

    private static boolean isOpen(Question q, PointHmm a, PointHmm b, Axis along) {
        for (Obstacle o : q.obstacles()) {
            boolean in = true;
            for (Axis axis : Axis.values()) {
                // Twice the middle of the step, strictly inside the grown box.
                int twice = a.along(axis) + b.along(axis);
                SpaceBox.Reach reach = o.box().along(axis);
                in &= twice > 2 * (reach.from() - q.keep()) && twice < 2 * (reach.to() + q.keep());
            }
            boolean through = o.thinnest() == along
                    && o.holes().stream()
                            .anyMatch(h -> java.util.Arrays.stream(Axis.values())
                                    .allMatch(x -> x == along || h.at().along(x) == a.along(x)));
            if (in && !through) {
                return false;
            }
        }
        return true;
    }

    @Test
    void isAsShortAsTheShortestOfAllSteps() {
        int found = 0;
        int longer = 0;
        int holes = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            Question q = question(seed);
            Optional<Way> way = q.asked();
            assertThat(way.map(Way::lengthHmm)).as("seed " + seed).isEqualTo(brute(q));
            found += way.isPresent() ? 1 : 0;
            longer += way.filter(w -> w.lengthHmm() > q.from().squareWayTo(q.to()))
                            .isPresent()
                    ? 1
                    : 0;
            holes += way.filter(w -> !w.holes().isEmpty()).isPresent() ? 1 : 0;
        }
        // Otherwise the comparison would say little.
        assertThat(found).isGreaterThan(SEEDS / 3);
        assertThat(longer).isGreaterThan(SEEDS / 20);
        assertThat(holes).isGreaterThan(SEEDS / 20);
    }

    @Test
    void isNeverShorterThanTheDistanceAndNoHoleMakesItLonger() {
        for (int seed = 0; seed < SEEDS; seed++) {
            Question q = question(seed);
            Optional<Way> way = q.asked();
            way.ifPresent(w ->
                    assertThat(w.lengthHmm()).isGreaterThanOrEqualTo(q.from().squareWayTo(q.to())));
            for (Obstacle o : q.obstacles()) {
                for (Hole hole : o.holes()) {
                    Optional<Way> less = q.without(hole).asked();
                    if (less.isPresent()) {
                        assertThat(way).as("seed " + seed).isPresent();
                        assertThat(way.get().lengthHmm())
                                .as("seed " + seed)
                                .isLessThanOrEqualTo(less.get().lengthHmm());
                    }
                }
            }
        }
    }

    /** A wall at x 4 to 5 but for a hole at (y 7, z 2): from (2, 1, 2) to (8, 1, 2) is 6 across and 6 there and back. */
    @Test
    void goesThroughTheHoleOfAWall() {
        Hole hole = new Hole("h", "hole", new PointHmm(4, 7, 2), 1, 1);
        Obstacle wall = new Obstacle("wall", box(4, 5, -1, SIZE + 1, -1, SIZE + 1), List.of(hole));
        Question q = new Question(1, List.of(wall), new PointHmm(2, 1, 2), new PointHmm(8, 1, 2));
        assertThat(q.asked()).contains(new Way(18, List.of("h")));
        assertThat(q.without(hole).asked()).isEmpty();
    }

    /** What a plug needs, from memory: 22 x 14 for the processor's; a 7 mm lip leaves that of 29 x 21. */
    @Test
    void aPlugPassesWhatItFitsExactly() {
        PlugSize plug = new PlugSize(Plug.PROCESSOR_8, 22, 14, 15, 8, 11);
        PointHmm at = new PointHmm(0, 0, 0);
        assertThat(new Hole("h", "h", at, 2900 - 700, 2100 - 700).passes(plug)).isTrue();
        assertThat(new Hole("h", "h", at, 2899 - 700, 2100 - 700).passes(plug)).isFalse();
        assertThat(new Hole("h", "h", at, 2900 - 700, 2099 - 700).passes(plug)).isFalse();
    }
}

package loopwright.plumbing.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Heading;
import org.junit.jupiter.api.Test;

/** Ways of tube: known detours, what blocks, both directions, and a re-check that shares nothing with the search. */
final class RouterTest {

    private static final Where SIZE = new Where(40_000, 40_000, 40_000);
    private static final TubeShape.Bends BENDS = new TubeShape.Bends(3000, 0, 5000, 1000);
    private static final TubeShape.Fitting STRAIGHT = new TubeShape.Fitting(2500, 1000, 14_000);
    private static final TubeShape.Fitting ELBOW = new TubeShape.Fitting(1400, 1000, 48_000);

    /** 16 mm tube that bends with 30 mm; no elbows. */
    private static final TubeShape SOFT = new TubeShape(800, BENDS, STRAIGHT, Optional.empty());

    private static final TubeShape WITH_ELBOWS = new TubeShape(800, BENDS, STRAIGHT, Optional.of(ELBOW));

    private static Space space(Solid... solids) {
        return new Space(SIZE, List.of(solids), List.of());
    }

    private static End end(int x, int y, int z, Heading out) {
        return new End(new Where(x, y, z), out);
    }

    private static Optional<Route> route(Space space, TubeShape tube, End from, End to) {
        return new Router(space, tube, 1000).route(from, to);
    }

    @Test
    void facingPortsAreJoinedByStraightTube() {
        Route route = route(
                        space(),
                        SOFT,
                        end(5000, 20_000, 20_000, Heading.RIGHT),
                        end(15_000, 20_000, 20_000, Heading.LEFT))
                .orElseThrow();
        assertThat(route.lengthHmm()).isEqualTo(10_000);
        assertThat(route.bends()).isZero();
        assertThat(route.costHmm()).isEqualTo(10_000);
    }

    @Test
    void offsetPortsTakeTwoBends() {
        Route route = route(
                        space(),
                        SOFT,
                        end(5000, 10_000, 20_000, Heading.RIGHT),
                        end(35_000, 20_000, 20_000, Heading.LEFT))
                .orElseThrow();
        assertThat(route.lengthHmm()).isEqualTo(40_000);
        assertThat(route.bends()).isEqualTo(2);
    }

    /** Legs of 25 + 30 mm at both ends: a way out, across and back. */
    @Test
    void portsSideBySideAreJoinedByABow() {
        Route route = route(space(), SOFT, end(10_000, 20_000, 0, Heading.UP), end(20_000, 20_000, 0, Heading.UP))
                .orElseThrow();
        assertThat(route.bends()).isEqualTo(2);
        assertThat(route.lengthHmm()).isBetween(2 * 5500 + 10_000, 2 * 5500 + 10_000 + 2000);
    }

    /** Two bends need twice the radius between them: 60 mm here, so ports 40 mm apart cannot be joined by a bow. */
    @Test
    void aBowIsNoTighterThanTheTubeBends() {
        End a = end(10_000, 20_000, 0, Heading.UP);
        End b = end(14_000, 20_000, 0, Heading.UP);
        Route route = route(space(), SOFT, a, b).orElseThrow();
        assertThat(route.bends()).isGreaterThan(2);
        assertThat(legsAreLongEnough(route, SOFT)).isTrue();
    }

    /** A wall 2 mm thick with one hole of 60 × 60 mm round (30, 30) cm: through the middle of it and back. */
    @Test
    void goesThroughTheOneHole() {
        Solid left = new Solid("wall", new Where(20_000, 0, 0), new Where(20_200, 27_000, 40_000));
        Solid right = new Solid("wall", new Where(20_000, 33_000, 0), new Where(20_200, 40_000, 40_000));
        Solid under = new Solid("wall", new Where(20_000, 27_000, 0), new Where(20_200, 33_000, 27_000));
        Solid over = new Solid("wall", new Where(20_000, 27_000, 33_000), new Where(20_200, 33_000, 40_000));
        Space space = space(left, right, under, over);
        Route route = route(
                        space,
                        SOFT,
                        end(3000, 10_000, 10_000, Heading.RIGHT),
                        end(37_000, 10_000, 10_000, Heading.LEFT))
                .orElseThrow();
        // the tube's axis stays 8 mm off the hole's edge: 17 800 more to the side and 17 800 more up, both ways
        assertThat(route.lengthHmm()).isBetween(34_000 + 4 * 17_800, 34_000 + 4 * 18_800);
        assertThat(clear(route, space, SOFT)).isTrue();
    }

    @Test
    void aHoleThinnerThanTheTubeIsNone() {
        Solid left = new Solid("left half", new Where(20_000, 0, 0), new Where(20_200, 20_000, 40_000));
        Solid right = new Solid("right half", new Where(20_000, 21_500, 0), new Where(20_200, 40_000, 40_000));
        Space space = space(left, right);
        End a = end(3000, 10_000, 10_000, Heading.RIGHT);
        End b = end(37_000, 10_000, 10_000, Heading.LEFT);
        assertThat(route(space, SOFT, a, b)).isEmpty();
        assertThat(new Blockers(space, SOFT, 1000).of(a, b)).containsExactly("left half");
    }

    @Test
    void aHoleAsWideAsTheTubeLetsItThrough() {
        Solid left = new Solid("left half", new Where(20_000, 0, 0), new Where(20_200, 9200, 40_000));
        Solid right = new Solid("right half", new Where(20_000, 10_800, 0), new Where(20_200, 40_000, 40_000));
        assertThat(route(
                        space(left, right),
                        SOFT,
                        end(3000, 10_000, 10_000, Heading.RIGHT),
                        end(37_000, 10_000, 10_000, Heading.LEFT)))
                .isPresent();
    }

    @Test
    void twoWallsBlockTogether() {
        Solid one = new Solid("first wall", new Where(15_000, 0, 0), new Where(15_200, 40_000, 40_000));
        Solid other = new Solid("second wall", new Where(25_000, 0, 0), new Where(25_200, 40_000, 40_000));
        Solid harmless = new Solid("a box", new Where(0, 0, 0), new Where(1000, 1000, 1000));
        assertThat(new Blockers(space(harmless, one, other), SOFT, 1000)
                        .of(end(3000, 10_000, 10_000, Heading.RIGHT), end(37_000, 10_000, 10_000, Heading.LEFT)))
                .containsExactlyInAnyOrder("first wall", "second wall");
    }

    @Test
    void aPortThatLooksIntoTheWallIsBlockedByTheWalls() {
        assertThat(new Blockers(space(), SOFT, 1000)
                        .of(end(39_000, 10_000, 10_000, Heading.RIGHT), end(3000, 10_000, 10_000, Heading.RIGHT)))
                .containsExactly(Space.WALLS);
    }

    /** 40 mm to the body over the port: no straight fitting with a bend, but a low elbow. */
    @Test
    void takesAnElbowWhereTheTubeCannotBend() {
        Solid lid = new Solid("lid", new Where(5000, 15_000, 4000), new Where(15_000, 25_000, 6000));
        End a = end(10_000, 20_000, 0, Heading.UP);
        End b = end(30_000, 20_000, 0, Heading.UP);
        assertThat(route(space(lid), SOFT, a, b)).isEmpty();
        Route route = route(space(lid), WITH_ELBOWS, a, b).orElseThrow();
        assertThat(route.elbows()).isEqualTo(1);
        assertThat(clear(route, space(lid), WITH_ELBOWS)).isTrue();
    }

    @Test
    void keepsOutOfTheAirOfFans() {
        Solid air = new Solid("fans", new Where(15_000, 0, 0), new Where(25_000, 40_000, 12_000));
        Space space = new Space(SIZE, List.of(), List.of(air));
        Route route = route(
                        space,
                        SOFT,
                        end(3000, 10_000, 10_000, Heading.RIGHT),
                        end(37_000, 10_000, 10_000, Heading.LEFT))
                .orElseThrow();
        assertThat(route.points().stream().mapToInt(Where::z).max().orElseThrow())
                .isGreaterThanOrEqualTo(12_800);
        assertThat(clear(route, space, SOFT)).isTrue();
    }

    @Test
    void waysAreFreeLongEnoughAndTheSameFromBothEnds() {
        int found = 0;
        for (int seed = 0; seed < 120; seed++) {
            Random random = new Random(seed);
            Space space = boxes(random);
            TubeShape tube = random.nextBoolean() ? SOFT : WITH_ELBOWS;
            End a = onWall(random);
            End b = onWall(random);
            Optional<Route> there = route(space, tube, a, b);
            Optional<Route> back = route(space, tube, b, a);
            assertThat(back.map(Route::lengthHmm)).as("seed " + seed).isEqualTo(there.map(Route::lengthHmm));
            Lattice lattice = new Lattice(space, tube, 1000, List.of(a, b));
            Optional<Integer> fromA = new RouteSearch(lattice, space, tube)
                    .routes(a, List.of(b))
                    .get(0)
                    .map(Route::costHmm);
            Optional<Integer> fromB = new RouteSearch(lattice, space, tube)
                    .routes(b, List.of(a))
                    .get(0)
                    .map(Route::costHmm);
            assertThat(fromB).as("seed " + seed + ", searched from either end").isEqualTo(fromA);
            if (there.isPresent()) {
                found++;
                Route route = there.get();
                assertThat((double) route.lengthHmm())
                        .as("seed " + seed)
                        .isGreaterThanOrEqualTo(a.at().straightTo(b.at()) - 1e-6);
                assertThat(route.points().get(0)).isEqualTo(a.at());
                assertThat(route.points().get(route.points().size() - 1)).isEqualTo(b.at());
                assertThat(clear(route, space, tube))
                        .as("seed " + seed + " " + route)
                        .isTrue();
                assertThat(legsAreLongEnough(route, tube))
                        .as("seed " + seed + " " + route)
                        .isTrue();
            }
        }
        assertThat(found).isBetween(40, 119);
    }

    @Test
    void moreInTheWayIsNeverShorter() {
        for (int seed = 0; seed < 40; seed++) {
            Random random = new Random(seed);
            Space space = boxes(random);
            End a = onWall(random);
            End b = onWall(random);
            int empty = route(space(), SOFT, a, b).map(Route::costHmm).orElse(Integer.MAX_VALUE);
            int full = route(space, SOFT, a, b).map(Route::costHmm).orElse(Integer.MAX_VALUE);
            assertThat(full).as("seed " + seed).isGreaterThanOrEqualTo(empty);
        }
    }

    private static Space boxes(Random random) {
        List<Solid> solids = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            Where low = new Where(
                    6500 + random.nextInt(22_000), 6500 + random.nextInt(22_000), 6500 + random.nextInt(22_000));
            Where high = new Where(
                    low.x() + 200 + random.nextInt(12_000),
                    low.y() + 200 + random.nextInt(12_000),
                    low.z() + 200 + random.nextInt(12_000));
            solids.add(new Solid("box " + i, low, high));
        }
        return new Space(SIZE, solids, List.of());
    }

    private static End onWall(Random random) {
        Heading out = List.of(Heading.values()).get(random.nextInt(6));
        Where at =
                new Where(1500 + random.nextInt(37_000), 1500 + random.nextInt(37_000), 1500 + random.nextInt(37_000));
        return new End(at.with(out.axis(), out.sign() > 0 ? 0 : 40_000), out);
    }

    /** Distance of every leg of tube to every box, by plain geometry: none nearer than the tube's radius. */
    private static boolean clear(Route route, Space space, TubeShape tube) {
        List<Solid> all = new ArrayList<>(space.solids());
        all.addAll(space.fanAir());
        for (int i = 1; i < route.points().size(); i++) {
            Where a = route.points().get(i - 1);
            Where b = route.points().get(i);
            for (Solid solid : all) {
                int farthest = Integer.MIN_VALUE;
                for (Axis axis : Axis.values()) {
                    int low = Math.min(a.along(axis), b.along(axis));
                    int high = Math.max(a.along(axis), b.along(axis));
                    farthest = Math.max(farthest, solid.low().along(axis) - high);
                    farthest = Math.max(farthest, low - solid.high().along(axis));
                }
                if (farthest < tube.radius()) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Between two bends twice the radius; between a fitting and a bend once. */
    private static boolean legsAreLongEnough(Route route, TubeShape tube) {
        List<Where> points = route.points();
        if (route.bends() == 0) {
            return true;
        }
        int bent = route.bends();
        int first = 1;
        // bends are the points that are neither ends nor elbows; an elbow is nearer to its port than a straight fitting
        while (points.size() - 2 - (first - 1) > bent
                && points.get(first).wayTo(points.get(first - 1)) == ELBOW.height()) {
            first++;
        }
        for (int i = 0; i + 1 < bent; i++) {
            if (points.get(first + i).wayTo(points.get(first + i + 1))
                    < 2 * tube.bends().radius()) {
                return false;
            }
        }
        int lead =
                points.get(first).wayTo(points.get(first - 1)) - tube.straight().height();
        int last = first + bent - 1;
        int tail =
                points.get(last).wayTo(points.get(last + 1)) - tube.straight().height();
        return lead >= tube.bends().radius() && tail >= tube.bends().radius();
    }
}

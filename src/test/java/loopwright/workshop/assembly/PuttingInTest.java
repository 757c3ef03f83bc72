package loopwright.workshop.assembly;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import loopwright.catalog.basis.Face;
import loopwright.geometry.SpaceBox;
import loopwright.geometry.SpaceBox.Reach;
import loopwright.workshop.assembly.Ways.Hall;
import org.junit.jupiter.api.Test;

/** The order found against every order there is, with boxes moved cell by cell; and deadlocks made by hand. */
class PuttingInTest {

    private static final int SEEDS = 400;
    private static final int SIZE = 5;

    private static SpaceBox box(int x0, int x1, int y0, int y1, int z0, int z1) {
        return new SpaceBox("box", false, 0, new Reach(x0, x1), new Reach(y0, y1), new Reach(z0, z1));
    }

    private static Piece piece(String id, SpaceBox... boxes) {
        return new Piece(id, id, List.of(boxes), List.of(), false, 0);
    }

    private static Hall hall(Set<Face> open, SpaceBox... builtIn) {
        Reach whole = new Reach(0, SIZE);
        return new Hall(whole, whole, whole, open, List.of(builtIn));
    }

    @Test
    void hooksThatHoldEachOtherAreNamed() {
        Reach flat = new Reach(0, 1);
        Hall narrow = new Hall(new Reach(0, 3), flat, new Reach(0, 2), Set.of(Face.LEFT), List.of());
        Piece a = piece("a", box(0, 1, 0, 1, 0, 1), box(2, 3, 0, 1, 1, 2));
        Piece b = piece("b", box(0, 1, 0, 1, 1, 2), box(2, 3, 0, 1, 0, 1));
        PuttingIn order = new PuttingIn(List.of(a, b), narrow);
        assertThat(order.order()).isEmpty();
        assertThat(order.deadlock()).containsExactly(0, 1);
        assertThat(order.service(0)).isEmpty();
    }

    @Test
    void aThirdPieceBehindTheHooksIsNotBlamed() {
        Reach flat = new Reach(0, 1);
        Hall narrow = new Hall(new Reach(0, 6), flat, new Reach(0, 2), Set.of(Face.LEFT), List.of());
        Piece a = piece("a", box(0, 1, 0, 1, 0, 1), box(2, 3, 0, 1, 1, 2));
        Piece b = piece("b", box(0, 1, 0, 1, 1, 2), box(2, 3, 0, 1, 0, 1));
        Piece behind = piece("c", box(4, 5, 0, 1, 0, 2));
        PuttingIn order = new PuttingIn(List.of(behind, a, b), narrow);
        assertThat(order.deadlock()).containsExactly(1, 2);
    }

    @Test
    void aPlugBehindARadiatorIsPluggedBeforeIt() {
        Hall hall = hall(Set.of(Face.LEFT));
        SpaceBox plug = new SpaceBox("plugs", true, 0, new Reach(2, 3), new Reach(0, 5), new Reach(0, 5));
        Piece supply = new Piece("supply", "supply", List.of(box(3, 5, 0, 5, 0, 5)), List.of(plug), false, 9);
        Piece radiator = piece("radiator", box(0, 1, 0, 5, 0, 5));
        PuttingIn order = new PuttingIn(List.of(supply, radiator), hall);
        assertThat(order.order()).containsExactly(0, 1);
        assertThat(order.service(0)).containsExactly(1, 0);
        assertThat(order.service(1)).containsExactly(1);
    }

    @Test
    void whatOnlyATiltCouldFreeBlocksNothing() {
        SpaceBox lip = box(0, 1, 0, 5, 0, 5);
        PuttingIn order = new PuttingIn(List.of(piece("long", box(1, 2, 0, 5, 0, 5))), hall(Set.of(Face.LEFT), lip));
        assertThat(order.tilts(0)).isTrue();
        assertThat(order.order()).containsExactly(0);
        assertThat(order.deadlock()).isEmpty();
    }

    @Test
    void agreesWithEveryOrderThereIs() {
        int locked = 0;
        int turned = 0;
        for (long seed = 0; seed < SEEDS; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            List<Piece> pieces = pieces(dice);
            Set<Face> open = dice.nextBoolean() ? EnumSet.of(Face.LEFT) : EnumSet.of(Face.LEFT, Face.ROOF);
            PuttingIn found = new PuttingIn(pieces, hall(open));
            List<Integer> order = found.order();
            boolean possible = anyOrder(pieces, open, new ArrayList<>());
            assertThat(order.size() == pieces.size()).as("seed %s", seed).isEqualTo(possible);
            assertThat(found.deadlock().isEmpty()).as("seed %s", seed).isEqualTo(possible);
            for (int k = 0; k < order.size() && possible; k++) {
                List<Integer> in = order.subList(0, k);
                assertThat(goes(pieces, open, in, order.get(k)))
                        .as("seed %s step %s", seed, k)
                        .isTrue();
            }
            List<Integer> blamed = List.copyOf(found.deadlock());
            for (int piece : blamed) {
                assertThat(goes(pieces, open, without(blamed, piece), piece))
                        .as("seed %s", seed)
                        .isFalse();
            }
            locked += possible ? 0 : 1;
            turned += possible && !order.equals(List.of(0, 1, 2, 3)) ? 1 : 0;
        }
        assertThat(locked).as("deadlocks among the cases").isGreaterThan(20);
        assertThat(turned).as("orders that matter").isGreaterThan(20);
    }

    private static List<Integer> without(List<Integer> all, int piece) {
        return all.stream().filter(i -> i != piece).toList();
    }

    /** Four pieces of up to four boxes, none through another. */
    private static List<Piece> pieces(SplittableRandom dice) {
        List<Piece> out = new ArrayList<>();
        while (out.size() < 4) {
            SpaceBox first = box(dice);
            Piece piece = piece("p" + out.size(), first, box(dice), box(dice), box(dice));
            boolean apart = out.stream()
                    .allMatch(o -> o.solids().stream()
                            .allMatch(a -> piece.solids().stream().noneMatch(b -> Ways.overlap(a, b))));
            if (apart) {
                out.add(piece);
            }
        }
        return out;
    }

    /** A bar across the whole depth half of the time: then nothing gives way to the front. */
    private static SpaceBox box(SplittableRandom dice) {
        int x = dice.nextInt(SIZE);
        int z = dice.nextInt(SIZE);
        int y = dice.nextInt(SIZE);
        return dice.nextInt(4) > 0
                ? box(x, x + 1, 0, SIZE, z, z + 1)
                : box(x, x + 1, y, y + 1 + dice.nextInt(SIZE - y), z, Math.min(SIZE, z + 2));
    }

    private static boolean anyOrder(List<Piece> pieces, Set<Face> open, List<Integer> in) {
        if (in.size() == pieces.size()) {
            return true;
        }
        for (int i = 0; i < pieces.size(); i++) {
            if (!in.contains(i) && goes(pieces, open, in, i)) {
                List<Integer> more = new ArrayList<>(in);
                more.add(i);
                if (anyOrder(pieces, open, more)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Cell by cell: some cells along one axis inside, then out through an open side, touching no cell that is taken. */
    private static boolean goes(List<Piece> pieces, Set<Face> open, List<Integer> in, int piece) {
        boolean[][][] taken = new boolean[SIZE][SIZE][SIZE];
        in.forEach(i -> pieces.get(i).solids().forEach(b -> fill(b, taken)));
        List<int[]> cells = cells(pieces.get(piece));
        for (Face side : open) {
            for (Face step : Face.values()) {
                int[] way = unit(step);
                List<int[]> at = cells;
                while (!at.isEmpty()) {
                    if (leaves(at, unit(side), taken)) {
                        return true;
                    }
                    at = step.normal() == side.normal() ? List.of() : moved(at, way, taken);
                }
            }
        }
        return false;
    }

    private static List<int[]> cells(Piece piece) {
        List<int[]> out = new ArrayList<>();
        boolean[][][] its = new boolean[SIZE][SIZE][SIZE];
        piece.solids().forEach(b -> fill(b, its));
        for (int x = 0; x < SIZE; x++) {
            for (int y = 0; y < SIZE; y++) {
                for (int z = 0; z < SIZE; z++) {
                    if (its[x][y][z]) {
                        out.add(new int[] {x, y, z});
                    }
                }
            }
        }
        return out;
    }

    private static void fill(SpaceBox b, boolean[][][] taken) {
        for (int x = b.x().from(); x < b.x().to(); x++) {
            for (int y = b.y().from(); y < b.y().to(); y++) {
                for (int z = b.z().from(); z < b.z().to(); z++) {
                    taken[x][y][z] = true;
                }
            }
        }
    }

    private static int[] unit(Face face) {
        int step = face.isHigh() ? 1 : -1;
        return switch (face.normal()) {
            case X -> new int[] {step, 0, 0};
            case Y -> new int[] {0, step, 0};
            case Z -> new int[] {0, 0, step};
        };
    }

    private static List<int[]> moved(List<int[]> cells, int[] way, boolean[][][] taken) {
        List<int[]> out = new ArrayList<>();
        for (int[] c : cells) {
            int[] next = {c[0] + way[0], c[1] + way[1], c[2] + way[2]};
            for (int k : next) {
                if (k < 0 || k >= SIZE) {
                    return List.of();
                }
            }
            if (taken[next[0]][next[1]][next[2]]) {
                return List.of();
            }
            out.add(next);
        }
        return out;
    }

    private static boolean leaves(List<int[]> cells, int[] way, boolean[][][] taken) {
        for (int[] c : cells) {
            int x = c[0];
            int y = c[1];
            int z = c[2];
            while (x >= 0 && y >= 0 && z >= 0 && x < SIZE && y < SIZE && z < SIZE) {
                if (taken[x][y][z]) {
                    return false;
                }
                x += way[0];
                y += way[1];
                z += way[2];
            }
        }
        return true;
    }
}

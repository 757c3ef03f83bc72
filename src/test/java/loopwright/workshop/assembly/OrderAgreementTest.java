package loopwright.workshop.assembly;

import static loopwright.workshop.assembly.Pieces.driver;
import static loopwright.workshop.assembly.Pieces.hall;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import loopwright.catalog.basis.Face;
import loopwright.catalog.standard.Fastening.Driver;
import org.junit.jupiter.api.Test;

/** Order, deadlock and service against every order there is: seeded cases with screws, shared bolts, lids and plugs. */
class OrderAgreementTest {

    private static final int SEEDS = 600;
    private static final List<Driver> DRIVERS = List.of(driver(2, 2, 2, 2), driver(6, 2, 4, 2));

    private int locked;
    private int forced;
    private int services;

    @Test
    void agreesWithEveryOrderThereIs() {
        for (long seed = 0; seed < SEEDS; seed++) {
            SplittableRandom dice = new SplittableRandom(seed);
            List<Piece> pieces = new RandomPieces(dice).pieces();
            Hall hall = hall(
                    dice.nextBoolean() ? Set.of(Face.LEFT) : Set.of(Face.LEFT, Face.ROOF),
                    2 * RandomPieces.CELLS,
                    RandomPieces.lip());
            PuttingIn found = new PuttingIn(pieces, hall, DRIVERS);
            BruteMachine brute = new BruteMachine(pieces, hall, DRIVERS);
            order(seed, found, brute);
            for (int i = 0; i < pieces.size(); i++) {
                service(seed, i, found, brute);
            }
        }
        assertThat(locked).as("deadlocks among the cases").isGreaterThan(20);
        assertThat(forced).as("orders that matter").isGreaterThan(100);
        assertThat(services).as("services that take something out").isGreaterThan(300);
    }

    private void order(long seed, PuttingIn found, BruteMachine brute) {
        Set<Integer> all = new TreeSet<>(found.members(found.all()));
        List<Integer> order = found.order();
        boolean possible = anyOrder(all, brute);
        assertThat(order.size() == all.size()).as("seed %s", seed).isEqualTo(possible);
        assertThat(found.deadlock().isEmpty()).as("seed %s", seed).isEqualTo(possible);
        for (int k = 0; k < order.size() && possible; k++) {
            assertThat(brute.leaves(order.get(k), new HashSet<>(order.subList(0, k))))
                    .as("seed %s step %s", seed, k)
                    .isTrue();
        }
        if (!possible) {
            locked++;
            Set<Integer> blamed = found.deadlock();
            assertThat(isStuck(blamed, brute)).as("seed %s", seed).isTrue();
            assertThat(subsets(all).stream()
                            .filter(s -> !s.isEmpty() && s.size() < blamed.size())
                            .noneMatch(s -> isStuck(s, brute)))
                    .as("seed %s: none smaller", seed)
                    .isTrue();
        } else {
            List<Integer> turned = new ArrayList<>(all);
            forced += goesInAs(turned, brute) ? 0 : 1;
        }
    }

    private static boolean goesInAs(List<Integer> order, BruteMachine brute) {
        for (int k = 0; k < order.size(); k++) {
            if (!brute.leaves(order.get(k), new HashSet<>(order.subList(0, k)))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isStuck(Set<Integer> set, BruteMachine brute) {
        return set.stream().noneMatch(i -> brute.leaves(i, without(set, i)));
    }

    private static Set<Integer> without(Set<Integer> set, int piece) {
        Set<Integer> out = new TreeSet<>(set);
        out.remove(piece);
        return out;
    }

    private static boolean anyOrder(Set<Integer> in, BruteMachine brute) {
        return in.isEmpty()
                || in.stream().anyMatch(i -> brute.leaves(i, without(in, i)) && anyOrder(without(in, i), brute));
    }

    /** The cheapest set that can be taken out first: dry before wet, then few before many. */
    private void service(long seed, int piece, PuttingIn found, BruteMachine brute) {
        Set<Integer> all = new TreeSet<>(found.members(found.all()));
        Optional<List<Integer>> said = new LeastOut(found).before(piece);
        Optional<Cost> best = subsets(without(all, piece)).stream()
                .filter(out -> comesOut(all, out, piece, brute))
                .map(out -> cost(out, found))
                .min((a, b) -> a.wet() == b.wet() ? Integer.compare(a.pieces(), b.pieces()) : a.wet() ? 1 : -1);
        assertThat(said.map(s -> cost(s, found)))
                .as("seed %s piece %s", seed, piece)
                .isEqualTo(best);
        said.ifPresent(out -> {
            Set<Integer> in = all;
            for (int one : out) {
                in = without(in, one);
                assertThat(brute.leaves(one, in))
                        .as("seed %s piece %s", seed, one)
                        .isTrue();
            }
            assertThat(brute.leaves(piece, without(in, piece)))
                    .as("seed %s", seed)
                    .isTrue();
            services += out.isEmpty() ? 0 : 1;
        });
    }

    private record Cost(boolean wet, int pieces) {}

    private static Cost cost(Iterable<Integer> out, PuttingIn found) {
        boolean wet = false;
        int count = 0;
        for (int i : out) {
            wet |= found.pieces().get(i).traits().wet();
            count++;
        }
        return new Cost(wet, count);
    }

    private static boolean comesOut(Set<Integer> in, Set<Integer> out, int piece, BruteMachine brute) {
        if (out.isEmpty()) {
            return brute.leaves(piece, without(in, piece));
        }
        return out.stream()
                .anyMatch(i ->
                        brute.leaves(i, without(in, i)) && comesOut(without(in, i), without(out, i), piece, brute));
    }

    private static List<Set<Integer>> subsets(Set<Integer> of) {
        List<Integer> all = List.copyOf(of);
        List<Set<Integer>> out = new ArrayList<>();
        for (int bits = 0; bits < 1 << all.size(); bits++) {
            Set<Integer> one = new TreeSet<>();
            for (int k = 0; k < all.size(); k++) {
                if ((bits >> k & 1) != 0) {
                    one.add(all.get(k));
                }
            }
            out.add(one);
        }
        return out;
    }
}

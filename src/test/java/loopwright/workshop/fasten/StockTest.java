package loopwright.workshop.fasten;

import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static loopwright.workshop.fasten.SampleStacks.PRACTICE;
import static loopwright.workshop.fasten.SampleStacks.row;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.part.Screw;
import loopwright.catalog.part.ScrewThread;
import loopwright.catalog.standard.Fastening.SeatMaterial;
import loopwright.workshop.fasten.LengthChoice.Fits;
import loopwright.workshop.fasten.LengthChoice.Padded;
import loopwright.workshop.fasten.LengthChoice.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is taken from stock, and what is said when nothing of it fits. */
class StockTest {

    private static Screw screw(ScrewThread thread, Screw.Head head, double lengthMm) {
        String id = thread + "-" + head + "-" + lengthMm;
        return new Screw(id, id, Optional.empty(), new Purchase(5, 2), thread, head, mm(lengthMm));
    }

    private static Stock stock(double... lengthsMm) {
        List<Screw> all = new ArrayList<>();
        for (double lengthMm : lengthsMm) {
            all.add(screw(ScrewThread.M3, Screw.Head.PAN, lengthMm));
        }
        return new Stock(all, PRACTICE);
    }

    private static LengthWindow between(double leastMm, double mostMm) {
        return new LengthWindow(0, hmm(leastMm), hmm(mostMm), hmm(mostMm) + 100, 0);
    }

    private static int length(Screw screw) {
        return screw.lengthMm().valueHmm();
    }

    @Test
    void theMiddleIsSafestAndTiesGoToTheShorter() {
        Fits fits = (Fits) stock(26, 28, 30, 32).choose(ScrewThread.M3, between(27, 31));
        assertThat(length(fits.screw())).isEqualTo(2800);
        assertThat(fits.alsoFit()).extracting(StockTest::length).containsExactly(3000);
    }

    /** Nothing from 31 to 33.9: 30 is too short, 34 too long, and a washer of 0.5 makes 34 fit. */
    @Test
    void aRefusalNamesNeighboursAndTheWasher() {
        Refused refused = (Refused) stock(30, 34, 35).choose(ScrewThread.M3, between(31, 33.9));
        assertThat(refused.shorter().map(StockTest::length)).contains(3000);
        assertThat(refused.longer().map(StockTest::length)).contains(3400);
        assertThat(refused.padded().map(Padded::washers)).contains(1);
        assertThat(refused.padded().map(p -> length(p.screw()))).contains(3400);
    }

    @Test
    void moreThanTwoWashersAreNoWayOut() {
        assertThat(((Refused) stock(35).choose(ScrewThread.M3, between(31, 34))).padded())
                .isPresent();
        assertThat(((Refused) stock(35).choose(ScrewThread.M3, between(31, 33.99))).padded())
                .isEmpty();
    }

    @Test
    void otherThreadsAndHeadsAreNotTaken() {
        Stock stock = new Stock(
                List.of(screw(ScrewThread.M4, Screw.Head.PAN, 30), screw(ScrewThread.M3, Screw.Head.COUNTERSUNK, 30)),
                PRACTICE);
        assertThat(stock.choose(ScrewThread.M3, between(29, 31)))
                .isEqualTo(new Refused(Optional.empty(), Optional.empty(), Optional.empty()));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 400);
    }

    /** What is chosen is inside and touches nothing; what is refused is nowhere in stock; what is padded is inside then. */
    @ParameterizedTest
    @MethodSource("seeds")
    void neverOutsideNeverMissed(long seed) {
        Random dice = new Random(seed);
        List<Screw> all = new ArrayList<>();
        for (int i = dice.nextInt(12); i > 0; i--) {
            all.add(screw(ScrewThread.M3, Screw.Head.PAN, (300 + dice.nextInt(5000)) / 100.0));
        }
        List<Clamped> layers = new ArrayList<>();
        for (int i = dice.nextInt(6); i > 0; i--) {
            layers.add(Clamped.exactly("layer", dice.nextInt(1500)));
        }
        int flange = 50 + dice.nextInt(400);
        int behind = dice.nextInt(900);
        List<SeatMaterial> materials = List.of(SeatMaterial.values());
        SeatMaterial material = materials.get(dice.nextInt(materials.size()));
        ThreadSeat seat = new ThreadSeat(ScrewThread.M3, material, mm(flange / 100.0), mm(behind / 100.0), "tube");
        LengthWindow window = LengthWindow.of(layers, seat, row(ScrewThread.M3), PRACTICE);
        int sum = layers.stream().mapToInt(Clamped::thicknessHmm).sum();
        int wanted = switch (material) {
            case STEEL -> 300;
            case ALUMINIUM -> 450;
            case PLASTIC -> 600;
        };
        List<Integer> inside = all.stream()
                .map(StockTest::length)
                .filter(l -> l - sum >= Math.min(flange, wanted) && sum + flange + behind - l >= 100)
                .sorted()
                .toList();
        LengthChoice choice = new Stock(all, PRACTICE).choose(ScrewThread.M3, window);
        if (choice instanceof Fits fits) {
            List<Integer> taken = new ArrayList<>(
                    fits.alsoFit().stream().map(StockTest::length).toList());
            taken.add(length(fits.screw()));
            assertThat(taken).as("seed %d", seed).containsExactlyInAnyOrderElementsOf(inside);
        } else if (choice instanceof Refused refused) {
            assertThat(inside).as("seed %d", seed).isEmpty();
            refused.shorter()
                    .ifPresent(s -> assertThat(length(s)).as("seed %d", seed).isLessThan(window.leastHmm()));
            refused.longer()
                    .ifPresent(s -> assertThat(length(s)).as("seed %d", seed).isGreaterThan(window.mostHmm()));
            refused.padded().ifPresent(p -> {
                int under = p.washers() * p.washerHmm();
                assertThat(length(p.screw()) - sum - under)
                        .as("seed %d", seed)
                        .isBetween(Math.min(flange, wanted), flange + behind - 100);
            });
        }
    }
}

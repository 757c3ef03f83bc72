package loopwright.workshop.finish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import loopwright.catalog.standard.Finishing;
import loopwright.catalog.standard.Finishing.Coats;
import loopwright.catalog.standard.Finishing.PaintSystem;
import loopwright.catalog.standard.Finishing.Product;
import loopwright.catalog.standard.Finishing.Step;
import loopwright.catalog.standard.Finishing.Surface;
import loopwright.testing.MachineParts;
import loopwright.workshop.finish.PaintedPart.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cans by area and coats; 1.5 m² a coat of 400 mL: common practice, no source. */
class CansTest {

    /** A square metre in square hundredths of a millimetre. */
    private static final long M2 = 10_000_000_000L;

    private static final Finishing USUAL = MachineParts.PRACTICE.finishing();

    /** Two coats of primer, three of colour, two of clear. */
    private static final Finishing PRACTICE = new Finishing(
            USUAL.film(),
            USUAL.can(),
            List.of(new PaintSystem(
                    Surface.METAL,
                    List.of(
                            step(Product.METAL_PRIMER, 2),
                            step(Product.COLOUR, 3),
                            new Step(
                                    "look at it",
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty(),
                                    Optional.empty()),
                            step(Product.CLEAR, 2)))),
            USUAL.cure(),
            USUAL.climate(),
            USUAL.colour());

    private static Step step(Product product, int coats) {
        return new Step(
                "spray",
                Optional.of(product),
                Optional.of(new Coats(coats, coats, coats)),
                Optional.empty(),
                Optional.empty());
    }

    private static PaintedPart part(String id, long areaHmm2) {
        return new PaintedPart(id, id, Kind.PANEL, Surface.METAL, areaHmm2, "mod", true);
    }

    private static String text(List<Cans> cans) {
        return cans.stream()
                .map(c -> c.product() + " " + c.cans() + "+" + c.spare())
                .collect(Collectors.joining(", "));
    }

    /** 0.55 m²: 1.10, 1.65, 1.10 m² coated. */
    @Test
    void theTradesSample() {
        assertThat(text(Cans.of(List.of(part("all", 55 * M2 / 100)), PRACTICE)))
                .isEqualTo("METAL_PRIMER 1+0, COLOUR 2+1, CLEAR 1+0");
    }

    @Test
    void partsAddUpBeforeCansAreCounted() {
        List<PaintedPart> parts = List.of(part("one", 30 * M2 / 100), part("other", 25 * M2 / 100));
        assertThat(text(Cans.of(parts, PRACTICE))).isEqualTo("METAL_PRIMER 1+0, COLOUR 2+1, CLEAR 1+0");
    }

    /** Half a square metre of colour fills a can exactly; a square hundredth more begins another. */
    @Test
    void aBegunCanIsACan() {
        assertThat(text(Cans.of(List.of(part("all", M2 / 2)), PRACTICE))).contains("COLOUR 1+1");
        assertThat(text(Cans.of(List.of(part("all", M2 / 2 + 1)), PRACTICE))).contains("COLOUR 2+1");
    }

    @Test
    void nothingToPaintNeedsNothing() {
        assertThat(Cans.of(List.of(), PRACTICE)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void cansAreEnoughAndNotOneTooMany(long seed) {
        Random dice = new Random(seed);
        List<PaintedPart> parts = dice.ints(1 + dice.nextInt(6), 1, Integer.MAX_VALUE)
                .mapToObj(area -> part("p" + area, 3L * area))
                .toList();
        for (Cans cans : Cans.of(parts, PRACTICE)) {
            long covered = cans.cans() * 3L * M2 / 2;
            assertThat(covered).as("seed %d", seed).isGreaterThanOrEqualTo(cans.coatedHmm2());
            assertThat(covered - 3 * M2 / 2).as("seed %d", seed).isLessThan(cans.coatedHmm2());
        }
    }
}

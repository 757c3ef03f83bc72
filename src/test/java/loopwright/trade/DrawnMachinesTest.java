package loopwright.trade;

import static loopwright.testing.Mm.box;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.span;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Span;
import loopwright.fit.Arrangement;
import loopwright.testing.Answers;
import loopwright.testing.Answers.Wish;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/**
 * The chance of a layout against machines that are drawn one by one, each dimension off by a draw, and asked whether they fit:
 * from the names of dimensions to the number that is told, nothing is taken on trust.
 */
class DrawnMachinesTest {

    private static final int DRAWS = 1500;

    private static final Wish WISH = new Wish("1x120", 30, Arrangement.PUSH);

    /** One draw of the five dimensions that matter; zeros for what is planned. */
    private record Off(double radiator, double fan, double rear, double card, double bar) {}

    /**
     * A front stack that ends 1 mm before the card and 0.8 mm before a bar beside the card; radiator and fan count in both. Each
     * margin's root sum square is over ±0.5, so that no floor comes in.
     */
    private static SmallCase machine(Off off) {
        return new SmallCase(330, 300)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("1x120", new Spot(85, 170))))
                .with(SmallParts.radiator("radiator", "1x120", mm(round(30 + off.radiator()), 1)))
                .with(SmallParts.fan("fan", 120, mm(round(25 + off.fan()), 0.5)))
                .rearPlane(mm(round(330 + off.rear()), 1))
                .with(SmallParts.card("card", mm(round(274 + off.card()), 1.5), 150))
                .obstruction(
                        "bar", box(span(120, 140), new Span(mm(round(55.8 + off.bar()), 0.8), mm(70)), span(100, 110)));
    }

    private static double round(double lengthMm) {
        return Math.round(lengthMm * 100) / 100.0;
    }

    @Test
    void asManyFitAsTheChanceSays() {
        double told = new Answers(machine(new Off(0, 0, 0, 0, 0)))
                .witness(WISH)
                .probability()
                .orElseThrow();
        Random random = new Random(11);
        int fit = 0;
        for (int i = 0; i < DRAWS; i++) {
            Off off = new Off(
                    random.nextGaussian() / 2,
                    random.nextGaussian() / 4,
                    random.nextGaussian() / 2,
                    random.nextGaussian() * 0.75,
                    random.nextGaussian() * 0.4);
            boolean fits = !new Answers(machine(off))
                    .matching(s -> s.arrangement() == Arrangement.PUSH)
                    .isEmpty();
            fit += fits ? 1 : 0;
        }
        double share = (double) fit / DRAWS;

        assertThat(told).isBetween(0.6, 0.85);
        assertThat(told).isCloseTo(share, within(4 * Math.sqrt(share * (1 - share) / DRAWS)));
    }
}

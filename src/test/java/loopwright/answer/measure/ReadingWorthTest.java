package loopwright.answer.measure;

import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import loopwright.geometry.Sum;
import loopwright.quantity.Dimension;
import loopwright.quantity.Distribution;
import loopwright.tolerance.AxisMargin;
import loopwright.tolerance.BoxMargin;
import loopwright.tolerance.FitProbability;
import loopwright.tolerance.PairMargin;
import loopwright.tolerance.ReadOff;
import loopwright.tolerance.Unsure;
import org.junit.jupiter.api.Test;

/**
 * One margin of 1 mm, bay less card, each ±1: each off by a standard deviation of 0.5. Expected numbers: the normal curve, and
 * Simpson's rule with 20 000 steps, done apart from this program.
 */
class ReadingWorthTest {

    private static final Dimension CARD = mm(200, 1);

    private static Unsure unsure(double marginMm, Dimension bay, Dimension card) {
        AxisMargin axis = AxisMargin.between(
                hmm(marginMm), Sum.ZERO.plus("case.bay", bay), Sum.ZERO.plus("card.length", card), "card bay y");
        return Unsure.of(List.of(new PairMargin(axis, List.of(new BoxMargin(List.of(axis))), new FitProbability())));
    }

    private static double avoided(Unsure unsure, Dimension read, int plusMinusHmm) {
        return new ReadingWorth().avoided(1 - unsure.chance(), unsure, "card.length", read, plusMinusHmm);
    }

    /** Φ(−1/√½) = 0.07865. */
    @Test
    void theChanceUnread() {
        assertThat(1 - unsure(1, mm(201, 1), CARD).chance()).isCloseTo(0.07865, within(1e-5));
    }

    /** A card read 1 mm longer leaves 0, of which the bay's 0.5 makes one half; 0.5 mm shorter leaves Φ(−3). */
    @Test
    void theChanceOnceRead() {
        Unsure unsure = unsure(1, mm(201, 1), CARD);
        assertThat(unsure.chance(new ReadOff("card.length", 100, 0))).isCloseTo(0.5, within(1e-9));
        assertThat(1 - unsure.chance(new ReadOff("card.length", -50, 0))).isCloseTo(0.00135, within(1e-5));
        assertThat(unsure.chance(new ReadOff("another", 100, 0))).isEqualTo(unsure.chance());
    }

    /** An exact reading: p − E[min(c, 1−c)] = 0.00619; one of ±0.5: 0.00209; one of ±1 tells nothing new. */
    @Test
    void whatAReadingAvoids() {
        Unsure unsure = unsure(1, mm(201, 1), CARD);
        assertThat(avoided(unsure, CARD, 0)).isCloseTo(0.00619, within(5e-4));
        assertThat(avoided(unsure, CARD, hmm(0.5))).isCloseTo(0.00209, within(5e-4));
        assertThat(avoided(unsure, CARD, hmm(0.5))).isLessThan(avoided(unsure, CARD, 0));
        assertThat(avoided(unsure, CARD, hmm(1))).isZero();
    }

    /** Where nothing else is off, the least spread of ±0.5 is left, c = Φ(−(1 + z)/0.25): avoided 0.11774 of Φ(−1) = 0.15866. */
    @Test
    void theLeastSpreadIsKept() {
        Unsure unsure = unsure(1, mm(201, 0), mm(200, 2));
        assertThat(1 - unsure.chance()).isCloseTo(0.15866, within(1e-5));
        assertThat(avoided(unsure, mm(200, 2), 0)).isCloseTo(0.11774, within(2e-3));
    }

    /** Evenly spread ±1 against ±1, margin 0.5: p = 0.2707, avoided 0.0922. */
    @Test
    void evenlySpreadDimensions() {
        Dimension even = new Dimension(hmm(200), hmm(1), CARD.known(), Distribution.RECTANGULAR);
        Unsure unsure = unsure(0.5, mm(201, 1), even);
        assertThat(1 - unsure.chance()).isCloseTo(0.27073, within(1e-4));
        assertThat(avoided(unsure, even, 0)).isCloseTo(0.09219, within(2e-3));
    }

    /** Margins of +1 and −1 mirror each other: to drop a plan for nothing counts as much as a clash. */
    @Test
    void aPlanDroppedForNothingCountsAsMuch() {
        assertThat(avoided(unsure(-1, mm(199, 1), CARD), CARD, 0))
                .isCloseTo(avoided(unsure(1, mm(201, 1), CARD), CARD, 0), within(1e-9));
    }

    @Test
    void sureMarginsAreLeftOut() {
        assertThat(unsure(3, mm(203, 1), CARD).isNothing()).isTrue();
        assertThat(unsure(1, mm(201, 1), CARD).dimensions()).containsOnlyKeys("card.length", "case.bay");
    }
}

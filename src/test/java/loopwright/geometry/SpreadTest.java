package loopwright.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import loopwright.quantity.Dimension;
import loopwright.quantity.Known;
import org.junit.jupiter.api.Test;

/** Worst case of a difference, hundredths of a millimetre. */
class SpreadTest {

    private static Dimension dimension(int valueHmm, int plusMinusHmm) {
        return new Dimension(valueHmm, plusMinusHmm, Known.MEASURED);
    }

    private static final Sum DEPTH = Sum.ZERO.plus("depth", dimension(33000, 100));

    @Test
    void everySpreadCounts() {
        Sum card = DEPTH.minus("card", dimension(26700, 150));
        Sum stack = Sum.ZERO.plus("fan", dimension(2500, 50)).plus("radiator", dimension(3000, 100));

        assertThat(Spread.worstCaseHmm(card, stack)).isEqualTo(400);
        assertThat(Spread.worstCaseHmm(stack, card)).isEqualTo(400);
    }

    @Test
    void theSameDimensionCancels() {
        Sum one = DEPTH.minus("a", dimension(1000, 20));
        Sum other = DEPTH.minus("b", dimension(2000, 30));

        assertThat(Spread.worstCaseHmm(one, other)).isEqualTo(50);
    }

    @Test
    void aHalfCountsHalfAndIsRoundedUp() {
        assertThat(Spread.worstCaseHmm(Sum.ZERO.plusHalves(1, "width", dimension(12000, 25)), Sum.ZERO))
                .isEqualTo(13);
    }

    /** Two fans of other thickness may share a name: each is off by its own. */
    @Test
    void dimensionsOfOneNameButOtherSizeKeepTheirOwnSpread() {
        Sum roof = Sum.ZERO.minus("fan.thickness", dimension(2500, 50));
        Sum floor = Sum.ZERO.plus("fan.thickness", dimension(1500, 20));

        assertThat(Spread.worstCaseHmm(roof, floor)).isEqualTo(70);
    }
}

package loopwright.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Purchase;
import loopwright.catalog.basis.SizeMm;
import loopwright.catalog.part.Supply;
import loopwright.quantity.Dimension;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SupplyLossTest {

    /** Efficiency where a sheet does not say, percent. */
    private static final double USUAL = 85;

    private static Supply supply(double ratedW, Supply.EfficiencyPoint... points) {
        Dimension none = Dimension.ofHmm(0);
        return new Supply(
                "supply",
                "Supply",
                Optional.empty(),
                new Purchase(0, 0),
                Supply.SupplyForm.ATX,
                new SizeMm(none, none, none),
                none,
                new Supply.Output(ratedW, 1, 1, 1, 1, 20, List.of(points)));
    }

    private static Supply.EfficiencyPoint point(double loadPercent, double efficiencyPercent) {
        return new Supply.EfficiencyPoint(loadPercent, efficiencyPercent);
    }

    /**
     * 80 PLUS, least efficiencies at 20, 50 and 100 % of the rating, 115 V; loss = load·(100/η − 1), computed. The second
     * level at half load: 500 W drawn as 555.56 W.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "plain, 80, 80, 80, 50.0, 125.0, 250.0",
        "bronze, 82, 85, 82, 43.9024, 88.2353, 219.5122",
        "silver, 85, 88, 85, 35.2941, 68.1818, 176.4706",
        "gold, 87, 90, 87, 29.8851, 55.5556, 149.4253",
        "platinum, 90, 92, 89, 22.2222, 43.4783, 123.5955",
        "titanium, 92, 94, 90, 17.3913, 31.9149, 111.1111"
    })
    @SuppressWarnings("TooManyParameters")
    void eachLevelLosesWhatItMayAtMost(
            String level, double low, double half, double full, double lowW, double halfW, double fullW) {
        Supply supply = supply(1000, point(20, low), point(50, half), point(100, full));

        assertThat(SupplyLoss.lossW(supply, 200, USUAL)).as(level).isCloseTo(lowW, within(1e-4));
        assertThat(SupplyLoss.lossW(supply, 500, USUAL)).as(level).isCloseTo(halfW, within(1e-4));
        assertThat(SupplyLoss.lossW(supply, 1000, USUAL)).as(level).isCloseTo(fullW, within(1e-4));
    }

    @Test
    void betweenPointsItIsAStraightLine() {
        Supply supply = supply(1000, point(20, 80), point(60, 90));
        // 85 % half way
        assertThat(SupplyLoss.lossW(supply, 400, USUAL)).isCloseTo(400 / 0.85 - 400, within(1e-9));
    }

    @Test
    void outsideItsPointsTheNearestHolds() {
        Supply supply = supply(1000, point(20, 80), point(50, 90));
        assertThat(SupplyLoss.lossW(supply, 100, USUAL)).isCloseTo(25, within(1e-9));
        assertThat(SupplyLoss.lossW(supply, 900, USUAL)).isCloseTo(100, within(1e-9));
        assertThat(SupplyLoss.lossW(supply(1000, point(50, 80)), 10, USUAL)).isCloseTo(2.5, within(1e-9));
    }

    @Test
    void aSupplyThatDoesNotSayHasTheUsualEfficiency() {
        assertThat(SupplyLoss.lossW(supply(650), 340, USUAL)).isCloseTo(60, within(1e-9));
        assertThat(SupplyLoss.lossW(supply(650), 0, USUAL)).isZero();
    }

    /** The points are shares of the rating: a larger supply reaches them later. */
    @Test
    void pointsAreSharesOfTheRating() {
        Supply large = supply(2000, point(20, 80), point(50, 90));
        assertThat(SupplyLoss.lossW(large, 1000, USUAL)).isCloseTo(1000 / 0.9 - 1000, within(1e-9));
        assertThat(SupplyLoss.lossW(large, 400, USUAL)).isCloseTo(100, within(1e-9));
    }
}

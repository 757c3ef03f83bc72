package loopwright.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.Catalog;
import loopwright.catalog.CatalogReader;
import loopwright.catalog.part.Supply;
import loopwright.catalog.standard.PracticeElectric;
import loopwright.catalog.standard.StandardElectric;
import loopwright.catalog.standard.StandardElectric.EfficiencyLevel;
import loopwright.catalog.standard.StandardElectric.Excursion;
import loopwright.catalog.standard.StandardElectric.Mains;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** Published figures, and what is worked out from them. */
class PublishedPowerTest {

    private static final Catalog DEMO = CatalogReader.read(Path.of("catalogs"));
    private static final StandardElectric PUBLISHED =
            DEMO.standards().electric().orElseThrow();

    /** ATX12VO design guide 613768 rev 2.01, Table 3-4: a supply of 1000 W between bursts, W. */
    @Test
    void betweenBurstsAsTheGuidesTableSays() {
        List<Double> table = List.of(918.0, 897.0, 882.0, 924.0);
        List<Double> bursts = List.of(2000.0, 1800.0, 1600.0, 1200.0);
        for (int i = 0; i < table.size(); i++) {
            Excursion row = PUBLISHED.excursions().get(i);
            assertThat(Excursions.burstW(1000, row)).isEqualTo(bursts.get(i));
            assertThat(Excursions.betweenW(1000, row)).isCloseTo(table.get(i), within(1.0));
            assertThat(Excursions.betweenW(650, row)).isCloseTo(0.65 * table.get(i), within(0.65));
        }
    }

    @Test
    void burstsThatTakeAllLeaveNothing() {
        assertThat(Excursions.betweenW(1000, new Excursion(200, 100, 25, "invented")))
                .isZero();
        assertThat(Excursions.betweenW(1000, new Excursion(200, 100, 0, "invented")))
                .isEqualTo(1000);
    }

    /** 80 PLUS minimum efficiency, at 20, 50 and 100 % of the rating. */
    @Test
    void levelsOfEfficiency() {
        assertThat(PUBLISHED.efficiency())
                .extracting(l -> l.level() + " " + l.mains() + " " + (int) l.lowPercent() + "/" + (int) l.halfPercent()
                        + "/" + (int) l.fullPercent())
                .containsExactly(
                        "white V115 80/80/80",
                        "white V230 82/85/82",
                        "bronze V115 82/85/82",
                        "bronze V230 85/88/85",
                        "silver V115 85/88/85",
                        "silver V230 87/90/87",
                        "gold V115 87/90/87",
                        "gold V230 90/92/89",
                        "platinum V115 90/92/89",
                        "platinum V230 92/94/90",
                        "titanium V115 92/94/90",
                        "titanium V230 94/96/94");
    }

    private static Supply supply(double ratedW, Supply.EfficiencyPoint... points) {
        Supply was = SmallParts.supply("s", 140, 40, ratedW);
        return new Supply(
                "s",
                "s",
                Optional.empty(),
                was.buy(),
                was.form(),
                was.body(),
                was.plugRoomMm(),
                new Supply.Output(ratedW, 1, 1, 1, 1, 30, List.of(points)));
    }

    private static Supply supply(double low, double half, double full) {
        return supply(
                1000,
                new Supply.EfficiencyPoint(20, low),
                new Supply.EfficiencyPoint(50, half),
                new Supply.EfficiencyPoint(100, full));
    }

    @Test
    void theHighestLevelReached() {
        assertThat(level(supply(90, 92, 89))).contains("gold");
        assertThat(level(supply(90, 91.9, 89))).contains("silver");
        assertThat(level(supply(94, 96, 94))).contains("titanium");
        assertThat(level(supply(81.9, 96, 94))).isEmpty();
        assertThat(level(supply(1000))).isEmpty();
    }

    private static Optional<String> level(Supply supply) {
        return EfficiencyLevels.reached(supply, PUBLISHED.efficiency(), Mains.V230)
                .map(EfficiencyLevel::level);
    }

    /** 500 W at 90 % draw 500/0.9. */
    @Test
    void fiveHundredWattsAtNinetyPercent() {
        assertThat(SupplyLoss.mainsW(supply(87, 90, 87), 500, 0)).isCloseTo(555.56, within(0.005));
        assertThat(SupplyLoss.lossW(supply(87, 90, 87), 500, 0)).isCloseTo(55.56, within(0.005));
    }

    /** The label of common practice: 650 W with 624 W on 12 V are 52 A. */
    @Test
    void sixHundredAndFiftyWattsAreFiftyTwoAmps() {
        Supply.Rails rails = DEMO.part(Supply.class, "supply-atx-650").rails().orElseThrow();
        assertThat(rails.twelveVoltA()).isEqualTo(52);
        assertThat(RailBudget.twelveMilliW(rails)).isEqualTo(624_000);
    }

    /** Half a milliwatt goes up: 0.0001 A × 12 V is 1.2 mW, 0.000125 A is 1.5. */
    @Test
    void ampsBecomeMilliwattsOnce() {
        assertThat(RailBudget.twelveMilliW(new Supply.Rails(10.0001, 0, Optional.empty(), Optional.empty())))
                .isEqualTo(120_001);
        assertThat(RailBudget.twelveMilliW(new Supply.Rails(10.000125, 0, Optional.empty(), Optional.empty())))
                .isEqualTo(120_002);
    }

    @Test
    void publishedLimits() {
        assertThat(PUBLISHED.card().slotW()).isEqualTo(75);
        assertThat(PUBLISHED.card().sixPinW()).isEqualTo(75);
        assertThat(PUBLISHED.card().eightPinW()).isEqualTo(150);
        assertThat(PUBLISHED.card().sixteenPinW()).isEqualTo(600);
        assertThat(PUBLISHED.card().codings()).extracting(c -> (int) c.powerW()).containsExactly(600, 450, 300, 150);
        assertThat(PUBLISHED.sata().contactA() * PUBLISHED.sata().contacts() * 12)
                .isEqualTo(54);
        assertThat(PUBLISHED.sata().contactA() * PUBLISHED.sata().contacts() * 5)
                .isEqualTo(22.5);
        assertThat(PUBLISHED.fan().steadyA()).isEqualTo(1.5);
        assertThat(PUBLISHED.fan().startA()).isEqualTo(2.2);
    }

    /** Document 336521, Table 2-1: 39 A over 26 A is what the practice takes for a processor that does not say. */
    @Test
    void theUsualPeakIsThatOfAPublishedClass() {
        StandardElectric.ProcessorPeak row = PUBLISHED.processorPeaks().get(1);
        assertThat(100 * row.peakA() / row.continuousA())
                .isEqualTo(PracticeElectric.USUAL.draw().processorPeakPercent());
    }

    @Test
    void theUsualNumbersAreThoseOfTheFile() {
        assertThat(DEMO.practice().electric()).contains(PracticeElectric.USUAL);
    }
}

package loopwright.fit;

import static loopwright.testing.Mm.mm;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loopwright.catalog.part.Drive;
import loopwright.catalog.part.GraphicsCard;
import loopwright.catalog.part.Plug;
import loopwright.catalog.part.Processor;
import loopwright.catalog.part.Supply;
import loopwright.fit.rules.PartRule;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/**
 * Every electrical rule at its limit, from both sides, through the model that posts it.
 *
 * <p>Loads of the small case at worst: processor 100, card 150, board 20, pump 15, small parts 25: 310 W, 10 of them low.
 */
class ElectricRulesTest {

    private static final Supply.Rails AMPLE = new Supply.Rails(80, 100, Optional.of(200), Optional.empty());

    private static Supply supply(double ratedW, Optional<Supply.Rails> rails, List<Supply.Cable> cables) {
        return supply(ratedW, rails, cables, new int[] {1, 4});
    }

    private static Supply supply(
            double ratedW, Optional<Supply.Rails> rails, List<Supply.Cable> cables, int[] processorAndCardPlugs) {
        Supply was = SmallParts.supply("supply", 140, 40, ratedW);
        return new Supply(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.form(),
                was.body(),
                was.plugRoomMm(),
                new Supply.Output(ratedW, processorAndCardPlugs[0], processorAndCardPlugs[1], 1, 4, 25, List.of()),
                rails,
                cables,
                List.of(),
                Optional.empty());
    }

    private static Supply rails(double ratedW, double twelveVoltA, double lowW, Optional<Integer> surgePercent) {
        return supply(
                ratedW, Optional.of(new Supply.Rails(twelveVoltA, lowW, surgePercent, Optional.empty())), List.of());
    }

    private static GraphicsCard card(double worstW, int eightPin, int sixteenPin, GraphicsCard.Electric electric) {
        GraphicsCard was = SmallParts.card("card", mm(150), worstW);
        return new GraphicsCard(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.cooling(),
                was.body(),
                new GraphicsCard.Power(
                        worstW, worstW, eightPin, sixteenPin, was.power().block()),
                was.performance(),
                Optional.of(electric),
                List.of(),
                Optional.empty());
    }

    private static GraphicsCard.Electric electric(int sixPin, Optional<Integer> sixteenPinW) {
        return new GraphicsCard.Electric(10, sixPin, Optional.empty(), sixteenPinW);
    }

    private static boolean goes(SmallCase with) {
        return !PartSet.all(with.fitCase()).isEmpty();
    }

    private static boolean goes(Supply supply) {
        return goes(small().with(supply));
    }

    private static SmallCase small() {
        return new SmallCase(300, 300);
    }

    @Test
    void aSupplyThatSaysNothingOfItsRailsIsNotAskedAboutThem() {
        assertThat(goes(supply(387.5, Optional.empty(), List.of()))).isTrue();
        assertThat(goes(supply(387.499, Optional.empty(), List.of()))).isFalse();
    }

    /** 300 W on 12 V are 25 A. */
    @Test
    void twelveVoltCarryTheirLoadsWithoutHeadroom() {
        assertThat(goes(rails(1000, 25, 100, Optional.of(200)))).isTrue();
        assertThat(goes(rails(1000, 24.9999, 100, Optional.of(200)))).isFalse();
    }

    /** A drive of 3 W with 2 on low: 12 V carry 301 W, low 12. */
    @Test
    void aDriveIsDividedBetweenTheRails() {
        Drive was = SmallParts.drive("drive");
        Drive drive = new Drive(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                Drive.DriveForm.M2,
                was.body(),
                was.plugRoomMm(),
                3,
                Optional.of(new Drive.Electric(1, 5, 2)),
                Optional.empty(),
                Optional.empty());
        SmallCase with = small().with(drive).drives("drive");
        assertThat(goes(with.with(rails(1000, 301 / 12.0 + 1e-7, 12, Optional.of(200)))))
                .isTrue();
        assertThat(goes(with.with(rails(1000, 25, 12, Optional.of(200))))).isFalse();
        assertThat(goes(with.with(rails(1000, 80, 11.999, Optional.of(200))))).isFalse();
    }

    @Test
    void lowRailsCarryTheirs() {
        assertThat(goes(rails(1000, 80, 10, Optional.of(200)))).isTrue();
        assertThat(goes(rails(1000, 80, 9.999, Optional.of(200)))).isFalse();
    }

    /** Card 150 at 200 %, processor 100 at 150 %, rest 60: 510 W. */
    @Test
    void theSupplyStandsTheBurst() {
        assertThat(goes(rails(510, 40, 100, Optional.of(100)))).isTrue();
        assertThat(goes(rails(509.999, 40, 100, Optional.of(100)))).isFalse();
        assertThat(goes(rails(400, 33, 100, Optional.of(128)))).isTrue();
        assertThat(goes(rails(400, 33, 100, Optional.of(127)))).isFalse();
    }

    /** What parts say of their bursts goes before the practice: 150 × 1.6 + 120 + 60 is 420. */
    @Test
    void burstsThatPartsSayCount() {
        GraphicsCard card = card(150, 1, 0, new GraphicsCard.Electric(5, 0, Optional.of(160), Optional.empty()));
        Processor was = SmallParts.processor("processor", 100);
        Processor processor = new Processor(
                was.id(),
                was.title(),
                was.variantOf(),
                was.buy(),
                was.socket(),
                was.heat(),
                100,
                Optional.of(new Processor.Electric(9, 120)));
        assertThat(goes(small().with(card).with(processor).with(rails(420, 40, 100, Optional.of(100)))))
                .isTrue();
        assertThat(goes(small().with(card).with(processor).with(rails(419.999, 40, 100, Optional.of(100)))))
                .isFalse();
    }

    /** 310 W and 150 W. */
    @Test
    void aSupplyWithRailsButWithoutSurgeKeepsAReserve() {
        assertThat(goes(rails(460, 38, 100, Optional.empty()))).isTrue();
        assertThat(goes(rails(459.999, 38, 100, Optional.empty()))).isFalse();
    }

    /** The largest figures that files allow do not overflow what the solver counts in. */
    @Test
    void theLargestSupplyIsCountedRight() {
        assertThat(goes(rails(3000, 250, 500, Optional.of(400)))).isTrue();
    }

    @Test
    void theBoardHasTheProcessorsPlugs() {
        Processor was = SmallParts.processor("processor", 100);
        Processor two = new Processor(
                was.id(), was.title(), was.variantOf(), was.buy(), was.socket(), new Processor.Heat(100, 100, 2), 100);
        Supply enough = supply(1000, Optional.empty(), List.of(), new int[] {2, 4});
        assertThat(goes(small().with(enough))).isTrue();
        assertThat(goes(small().with(enough).with(two))).isFalse();
    }

    @Test
    void eightPinPlugsServeSixPinOnesToo() {
        GraphicsCard card = card(150, 2, 0, electric(1, Optional.empty()));
        assertThat(goes(small().with(card).with(supply(1000, Optional.empty(), List.of(), new int[] {1, 3}))))
                .isTrue();
        assertThat(goes(small().with(card).with(supply(1000, Optional.empty(), List.of(), new int[] {1, 2}))))
                .isFalse();
    }

    @Test
    void theSixteenPinPlugIsCodedForTheCard() {
        GraphicsCard card = card(150, 0, 1, electric(0, Optional.of(450)));
        assertThat(goes(small().with(card).with(coded(Optional.of(450))))).isTrue();
        assertThat(goes(small().with(card).with(coded(Optional.of(300))))).isFalse();
        assertThat(goes(small().with(card).with(coded(Optional.empty())))).isTrue();
        assertThat(goes(small().with(card(150, 1, 0, electric(0, Optional.of(450))))
                        .with(coded(Optional.of(300)))))
                .as("a card without such a plug")
                .isTrue();
    }

    private static Supply coded(Optional<Integer> sixteenPinW) {
        return supply(1000, Optional.of(new Supply.Rails(80, 100, Optional.of(200), sixteenPinW)), List.of());
    }

    /** Over 225 W, not at 225. */
    @Test
    void aThirstyCardWantsACableForEachPlug() {
        Supply one = supply(1000, Optional.of(AMPLE), cables(1));
        Supply two = supply(1000, Optional.of(AMPLE), cables(2));
        Supply unsaid = supply(1000, Optional.of(AMPLE), List.of());
        for (double watts : List.of(225.0, 225.001)) {
            GraphicsCard card = card(watts, 2, 0, electric(0, Optional.empty()));
            assertThat(goes(small().with(card).with(one))).isEqualTo(watts <= 225);
            assertThat(goes(small().with(card).with(two))).isTrue();
            assertThat(goes(small().with(card).with(unsaid))).isTrue();
        }
    }

    private static List<Supply.Cable> cables(int forCards) {
        List<Supply.Cable> out = new ArrayList<>();
        out.add(new Supply.Cable(Plug.CARD_16, 2, 500, Optional.of(80.0), false));
        for (int i = 0; i < forCards; i++) {
            out.add(new Supply.Cable(Plug.CARD_8, 2, 500, Optional.of(80.0), false));
        }
        return out;
    }

    @Test
    void everyRuleSaysItself() {
        assertThat(PartRuleList.of(small().fitCase()).stream()
                        .filter(r -> r.id().startsWith("electric."))
                        .map(PartRule::statement)
                        .toList())
                .containsExactly(
                        "the supply has as many processor plugs as the processor wants",
                        "the supply has as many 8-pin (6 + 2) and 16-pin card plugs as the card wants",
                        "the supply has at least 0 SATA plugs",
                        "the supply is rated for the sum of worst loads and 25 %",
                        "the supply's 12 V carry the worst loads on 12 V, 15.0 W of drives and small parts among them",
                        "the supply brings 10.0 W on 5 V and 3.3 V together",
                        "the supply stands the card's burst and the processor's peak (where they say nothing 200 % and 150"
                                + " % of their worst), 25.0 W of drives and small parts and all else at worst, for 100 us",
                        "a supply that does not say what bursts it stands is rated for the worst loads and 150 W",
                        "the board has as many processor plugs as the processor wants",
                        "the supply's 16-pin plug is coded for at least what the card's must be",
                        "a card over 225 W gets each of its 8-pin plugs from a cable of its own");
    }
}

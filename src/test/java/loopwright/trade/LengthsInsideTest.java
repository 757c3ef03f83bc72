package loopwright.trade;

import static loopwright.testing.Answers.gap;
import static loopwright.testing.Mm.box;
import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.pose;
import static loopwright.testing.Mm.span;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Heading;
import loopwright.catalog.basis.Point;
import loopwright.catalog.chassis.Place;
import loopwright.catalog.part.Supply;
import loopwright.fit.Arrangement;
import loopwright.fit.FoundLayout;
import loopwright.fit.Gap;
import loopwright.fit.rules.Role;
import loopwright.geometry.Verdict;
import loopwright.testing.Answers;
import loopwright.testing.Answers.Wish;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source: card against front stack, supply against its bay, supply against its load. */
class LengthsInsideTest {

    private static final Wish SINGLE = new Wish("1x120", 30, Arrangement.PUSH);

    /** A front of 1x120 low enough to face the card. */
    private static SmallCase front(double depthMm) {
        return new SmallCase(depthMm, 300)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("1x120", new Spot(85, 170))))
                .with(SmallParts.radiator("radiator", "1x120", mm(30, 1)))
                .with(SmallParts.fan("fan", 120, mm(25, 0.5)));
    }

    /** 330 inside, stack 30 + 25, card 267: a gap of 8; with ± 1 case, 1 radiator, 0.5 fan, 1.5 card, 4 are left at worst. */
    @Test
    void aCardBehindAFrontStack() {
        SmallCase front = front(330).rearPlane(mm(330, 1)).with(SmallParts.card("card", mm(267, 1.5), 150));

        Gap gap = gap(new Answers(front).witness(SINGLE), "front radiator", "card");
        assertThat(gap.clearanceHmm()).isEqualTo(hmm(8));
        assertThat(gap.worstCaseHmm()).isEqualTo(hmm(4));
        assertThat(gap.verdict()).isEqualTo(Verdict.CLEAR);
    }

    /** The same with a card off by 6: at worst half a millimetre is missing, so it is tight whatever the 8. */
    @Test
    void aCardThatNobodyMeasuredWellIsTight() {
        SmallCase front = front(330).rearPlane(mm(330, 1)).with(SmallParts.card("card", mm(267, 6), 150));

        Gap gap = gap(new Answers(front).witness(SINGLE), "front radiator", "card");
        assertThat(gap.worstCaseHmm()).isEqualTo(hmm(-0.5));
        assertThat(gap.verdict()).isEqualTo(Verdict.TIGHT);
    }

    /**
     * A bay for 150 mm supplies: 150, plugs and bend 50, and 10 to spare, which is clear of cables. There 160 is tight and
     * 200 does not fit.
     */
    @ParameterizedTest(name = "{0} mm: {1}")
    @CsvSource({"150, CLEAR", "155, CLOSE", "160, TIGHT", "160.01, CLASH", "200, CLASH"})
    void aBayForSuppliesOf150(double lengthMm, Verdict verdict) {
        double bayMm = 150 + 50 + 10;
        SmallCase front = front(500)
                .with(SmallParts.supply("supply", lengthMm, 50, 1000))
                .supplyAtTheRear(400, 0)
                .obstruction("cage", box(span(400, 550), span(200, 500 - bayMm), span(0, 100)));
        Answers answers = new Answers(front);

        if (verdict == Verdict.CLASH) {
            assertThat(answers.all()).isEmpty();
        } else {
            Gap gap = gap(answers.witness(SINGLE), "supply plugs", "cage");
            assertThat(gap.marginHmm()).isEqualTo(hmm(160 - lengthMm));
            assertThat(gap.verdict()).isEqualTo(verdict);
        }
    }

    /** Worst case is the sum of all ±: of two places that are each off by 1, both count; their names do not cancel. */
    @Test
    void twoPlacesAreOffEachByItself() {
        SmallCase front = front(500)
                .with(SmallParts.supply("supply", 150, 50, 1000))
                .with(SmallParts.drive("drive"))
                .drives("drive")
                .place("bay", Place.Holds.ATX, pose(corner(400, 500), Heading.FRONT), Optional.empty())
                .place("drive-place", Place.Holds.D2_5, pose(corner(400, 300 - 9), Heading.FRONT), Optional.empty());

        Gap gap = gap(new Answers(front).witness(SINGLE), "supply plugs", "drive");
        assertThat(gap.clearanceHmm()).isEqualTo(hmm(9));
        assertThat(gap.worstCaseHmm()).isEqualTo(hmm(7));
    }

    private static Point corner(double xMm, double yMm) {
        return new Point(mm(xMm), mm(yMm, 1), mm(0));
    }

    /** Processor 180, card 350, the rest 60: 590 W, with a quarter more 737.5 W, so 750 of {700, 750}. */
    @Test
    void aQuarterMoreThanTheLoadPicksThe750() {
        SmallCase both =
                loaded().with(SmallParts.supply("s700", 140, 40, 700)).with(SmallParts.supply("s750", 140, 40, 750));
        Answers answers = new Answers(both);

        FoundLayout found = answers.all().get(0);
        assertThat(answers.witness(found.layout(), found.needed().get(0))
                        .parts()
                        .the(Role.SUPPLY, Supply.class)
                        .id())
                .isEqualTo("s750");
        assertThat(new Answers(both.without("s750")).all()).isEmpty();
    }

    @ParameterizedTest(name = "{0} W carries 590 W and a quarter: {1}")
    @CsvSource({"737.49, false", "737.5, true"})
    void theLimitIsExact(double ratedW, boolean carries) {
        Answers answers = new Answers(loaded().with(SmallParts.supply("supply-limit", 140, 40, ratedW)));

        assertThat(!answers.all().isEmpty()).isEqualTo(carries);
    }

    /** Board 20 W, pump 15 W and small parts 25 W make the rest of 60 W. */
    private static SmallCase loaded() {
        return front(500)
                .headroom(25)
                .without("supply")
                .with(SmallParts.processor("processor", 180))
                .with(SmallParts.card("card", mm(150), 350));
    }
}

package loopwright.trade;

import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.fit.FitSearch;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.fit.Gap;
import loopwright.fit.Shortfalls;
import loopwright.fit.Witness;
import loopwright.fit.WitnessFinder;
import loopwright.geometry.Verdict;
import loopwright.testing.Answers;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A card behind a front stack where tight places are refused, by hand: 330 inside, stack 30 + 25, so 275 for the card.
 * Common practice, no source: a place is tight below 2 mm, or if the worst case meets.
 */
class NoTightPlacesTest {

    /** Depth ± 1, radiator ± 1, fan ± 0.5, card ± 1.5: 4 mm at worst. */
    private static SmallCase unsure(double cardMm) {
        return front(mm(30, 1), mm(25, 0.5)).rearPlane(mm(330, 1)).with(SmallParts.card("card", mm(cardMm, 1.5), 150));
    }

    private static SmallCase front(loopwright.quantity.Dimension radiator, loopwright.quantity.Dimension fan) {
        return new SmallCase(330, 300)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("1x120", new Spot(85, 170))))
                .with(SmallParts.radiator("radiator", "1x120", radiator))
                .with(SmallParts.fan("fan", 120, fan));
    }

    @ParameterizedTest(name = "all exact, card {0}: {1}")
    @CsvSource({"273, true", "273.01, false"})
    void twoMillimetresAreAskedWhereEverythingIsExact(double cardMm, boolean fits) {
        SmallCase exact = front(mm(30), mm(25)).with(SmallParts.card("card", mm(cardMm), 150));
        assertThat(exact.refusingTightPlaces().fits().fits().isEmpty()).isNotEqualTo(fits);
    }

    @ParameterizedTest(name = "card {0}: {1}")
    @CsvSource({"271, true", "271.01, false"})
    void theWorstCaseIsAskedWhereThatIsMore(double cardMm, boolean fits) {
        assertThat(unsure(cardMm).fits().fits()).isNotEmpty();
        assertThat(unsure(cardMm).refusingTightPlaces().fits().fits().isEmpty()).isNotEqualTo(fits);
    }

    @Test
    void whatIsReportedIsThePlainMargin() {
        Answers answers = new Answers(unsure(271).refusingTightPlaces());
        FoundLayout found = answers.all().get(0);
        Witness witness = answers.witness(found.layout(), found.needed().get(0));
        Gap gap = witness.tightest();
        assertThat(gap.one()).isEqualTo("card");
        assertThat(gap.marginHmm()).isEqualTo(hmm(4));
        assertThat(gap.worstCaseHmm()).isZero();
        assertThat(witness.gaps()).noneMatch(g -> g.verdict().compareTo(Verdict.TIGHT) <= 0);
    }

    @Test
    void aShortfallIsOfThePlaceThatIsNotTight() {
        SmallCase refusing = unsure(272.5).refusingTightPlaces();
        FitSearch search = refusing.search(FitWish.ALL);
        Shortfalls.Shortfall lacks = new Shortfalls(search)
                .of(
                        refusing.fitCase().frames().get(0),
                        refusing.fitCase().shapes().all());
        assertThat(lacks.shortfallHmm()).contains(hmm(1.5));
        assertThat(lacks.blockedBy()).isEqualTo("card");
    }

    /** Were everything 4 mm better: a card of 279 would just go in. */
    @ParameterizedTest(name = "card {0}: {1}")
    @CsvSource({"279, true", "279.01, false"})
    void atBestCaseTheWorstCaseIsInOurFavour(double cardMm, boolean fits) {
        assertThat(unsure(cardMm).fits().fits()).isEmpty();
        FitSearch search = FitSearch.atBestCase(unsure(cardMm).fitCase(), FitWish.ALL, () -> false);
        List<FoundLayout> found = search.run().fits();
        assertThat(found.isEmpty()).isNotEqualTo(fits);
        for (FoundLayout each : found) {
            Witness witness = new WitnessFinder(search)
                    .witness(each.layout(), each.needed().get(0));
            assertThat(witness.tightest().marginHmm()).isEqualTo(hmm(-4));
            assertThat(witness.tightest().verdict()).isEqualTo(Verdict.CLASH);
        }
    }
}

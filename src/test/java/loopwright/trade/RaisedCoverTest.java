package loopwright.trade;

import static loopwright.testing.Answers.gap;
import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.coverOverRings;
import static loopwright.testing.SmallMods.coverOverWindow;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static loopwright.testing.SmallMods.without;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Mount;
import loopwright.fit.Arrangement;
import loopwright.fit.Gap;
import loopwright.fit.Witness;
import loopwright.geometry.Verdict;
import loopwright.testing.Answers;
import loopwright.testing.Answers.Wish;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Common practice, no source: what a raised roof cover buys, and when it takes the fans. */
class RaisedCoverTest {

    private static final double MEMORY_MM = 30;
    private static final Spot SPOT = new Spot(250, 100);
    private static final Wish PUSH = new Wish("2x120", 30, Arrangement.PUSH);
    private static final Wish COVER_PUSH = new Wish("2x120", 30, Arrangement.COVER_PUSH);

    /** A roof over a flat board: this much room between roof and memory. */
    private static SmallCase roof(double depthToMemoryMm, Mount mount) {
        return new SmallCase(400, SmallCase.BOARD_TOP_MM + MEMORY_MM + depthToMemoryMm)
                .mount(Face.ROOF, mount)
                .with(SmallParts.memory("memory", mm(MEMORY_MM)))
                .with(SmallParts.radiator("radiator", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)));
    }

    private static SmallCase roof(double depthToMemoryMm) {
        return roof(depthToMemoryMm, mount("roof", Axis.Y, seat("2x120", SPOT)));
    }

    private static SmallCase withCover(SmallCase roof, double insideHeightMm, double skinFreeArea) {
        return roof.with(SmallParts.cover("cover", "2x120", insideHeightMm, skinFreeArea))
                .with(coverOverRings("raise", "roof", "cover", SPOT));
    }

    private static Gap overMemory(Answers answers, Wish wish) {
        return gap(answers.witness(wish), "roof radiator", "memory");
    }

    /** Radiator 30 and fan 25 need 55 of 52: a clash by 3, no less. */
    @Test
    void inFiftyTwoAStackOfFiftyFiveClashesByThree() {
        assertThat(new Answers(roof(52)).all()).isEmpty();
        assertThat(new Answers(roof(52 + 2.99)).all()).isEmpty();

        Gap gap = overMemory(new Answers(roof(52 + 3)), PUSH);
        assertThat(gap.marginHmm()).isZero();
        assertThat(gap.verdict()).isEqualTo(Verdict.TIGHT);
    }

    /** With the fans in a cover 30 high inside (25 and a gap of 5), 30 are needed of 52: 22 left, clear. */
    @Test
    void withTheFansInACoverTwentyTwoAreLeft() {
        Answers answers = new Answers(withCover(roof(52), 30, 0.6));

        assertThat(answers.needed(answers.of(COVER_PUSH))).containsExactly("[raise]");
        assertThat(overMemory(answers, COVER_PUSH).marginHmm()).isEqualTo(hmm(22));
        assertThat(overMemory(answers, COVER_PUSH).verdict()).isEqualTo(Verdict.CLEAR);
        assertThat(answers.of(PUSH)).isEmpty();
    }

    /** Same roof, same memory, same gasket: the cover frees as much inside as the fans are thick, 25 to 30 in the trade. */
    @ParameterizedTest(name = "fans {0} mm, gasket {1} mm")
    @CsvSource({"25, 0", "25, 1.5", "28, 0", "30, 1.5"})
    void theCoverFreesTheFansThickness(double fanMm, double gasketMm) {
        Mount plain = mount("roof", Axis.Y, seat("2x120", SPOT));
        Mount mount = new Mount(
                plain.id(),
                plain.panel(),
                plain.lengthwise(),
                plain.insetMm(),
                plain.seats(),
                plain.opening(),
                Optional.of(new Mount.Gasket(mm(2 * gasketMm), mm(gasketMm))),
                plain.touches());
        SmallCase roof = withCover(roof(70, mount), 40, 0.6).with(SmallParts.fan("fan", 120, mm(fanMm)));
        Answers answers = new Answers(roof);

        int inside = overMemory(answers, PUSH).marginHmm();
        int inCover = overMemory(answers, COVER_PUSH).marginHmm();
        assertThat(inside).isEqualTo(hmm(70 - gasketMm - fanMm - 30));
        assertThat(inCover - inside).isEqualTo(hmm(fanMm)).isBetween(hmm(25), hmm(30));
    }

    /** A perforated skin wants 5 over the fans, a solid one 15: 25 thick fans want 30 or 40 inside. */
    @ParameterizedTest(name = "inside {0} mm, skin open {1}: {2}")
    @CsvSource({"30, 0.55, true", "29.99, 0.55, false", "30, 0.54, false", "39.99, 0, false", "40, 0, true"})
    void aSolidSkinWantsMoreRoomOverTheFans(double insideMm, double skinFreeArea, boolean takesFans) {
        Answers answers = new Answers(withCover(roof(52), insideMm, skinFreeArea));

        assertThat(!answers.of(COVER_PUSH).isEmpty()).isEqualTo(takesFans);
    }

    /** A roof made for 2x120 takes a 2x140 radiator only with a cover for 2x140 over a window. */
    @Test
    void aRoofForTwo120TakesTwo140OnlyWithACoverForTwo140() {
        Spot wide = new Spot(230, 105);
        SmallCase roof = withCover(roof(90), 30, 0.6)
                .with(SmallParts.radiator("wide", "2x140", mm(30)))
                .with(SmallParts.fan("fan-wide", 140, mm(25)))
                .with(SmallParts.cover("cover-wide", "2x140", 30, 0.6))
                .with(without(coverOverWindow("raise-wide", "roof", "cover-wide", "2x140", wide), "raise"));
        Answers answers = new Answers(roof);

        assertThat(answers.needed(answers.matching(s -> s.pattern().sizeMm() == 140)))
                .containsExactly("[raise-wide]");
        assertThat(answers.needed(answers.matching(s -> s.pattern().sizeMm() == 120)))
                .containsExactly("[]", "[raise]");
    }

    /** The fans lie inside the cover's walls wherever they may slide, and not a hundredth beyond. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 2, 2.01})
    void fansLieInsideTheCoversWalls(double asideMm) {
        SmallCase roof = roof(52).with(SmallParts.cover("cover", "2x120", 30, 0.6))
                .with(coverOverRings("raise", "roof", "cover", new Spot(250, 100 + asideMm)));

        assertThat(new Answers(roof).of(COVER_PUSH).isEmpty()).isEqualTo(asideMm > 2);
    }

    @Test
    void theWitnessNamesTheTightestPlace() {
        SmallCase roof = withCover(roof(52), 30, 0.6).with(SmallParts.radiator("radiator", "2x120", mm(50)));
        Witness witness = new Answers(roof).witness(new Wish("2x120", 50, Arrangement.COVER_PUSH));

        assertThat(witness.tightest()).isEqualTo(gap(witness, "roof radiator", "memory"));
        assertThat(witness.tightest().marginHmm()).isEqualTo(hmm(2));
        assertThat(witness.tightest().verdict()).isEqualTo(Verdict.CLOSE);
    }
}

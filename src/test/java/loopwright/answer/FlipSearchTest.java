package loopwright.answer;

import static loopwright.testing.Mm.hmm;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.fit.Gap;
import loopwright.geometry.Verdict;
import loopwright.quantity.Dimension;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/**
 * A roof 2x120 over memory, by hand: radiator 30 and fans 25 take 55 of what is between roof and memory. There is push and
 * pull, each with its ports at either end: four layouts.
 */
class FlipSearchTest {

    private static final Spot SPOT = new Spot(250, 100);

    /** So much between the roof and memory of 30. */
    private static SmallCase roof(double roomMm) {
        return new SmallCase(400, SmallCase.BOARD_TOP_MM + 30 + roomMm)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", SPOT)))
                .with(SmallParts.memory("memory", mm(30)))
                .with(SmallParts.radiator("r-a", "2x120", mm(30)))
                .with(SmallParts.radiator("r-b", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)));
    }

    private static Flips flips(SmallCase before, SmallCase after) {
        return FlipSearch.flips(before.fitCase(), after.fitCase(), Halt.NEVER);
    }

    /** 56 of room are 1 too many; with memory of 32 there are 54, 1 too few. */
    @Test
    void theDeadSayWhatMeetsAndByHowMuch() {
        Flips flips = flips(roof(56), roof(56).with(SmallParts.memory("memory", mm(32))));
        assertThat(flips.died()).hasSize(4).allSatisfy(d -> {
            Gap gap = d.clash().gap().orElseThrow();
            assertThat(gap.marginHmm()).isEqualTo(hmm(-1));
            assertThat(List.of(gap.one(), gap.other())).contains("memory");
            assertThat(d.only()).isEmpty();
        });
        assertThat(flips.alive()).isEmpty();
        assertThat(flips.verdicts()).isEmpty();
        assertThat(flips.same()).isZero();
        assertThat(flips.incompleteBecause()).isEmpty();
    }

    @Test
    void theOtherWayRoundTheyComeAlive() {
        Flips flips = flips(roof(56).with(SmallParts.memory("memory", mm(32))), roof(56));
        assertThat(flips.died()).isEmpty();
        assertThat(flips.alive()).hasSize(4).allSatisfy(a -> {
            assertThat(a.tightest().marginHmm()).isEqualTo(hmm(1));
            assertThat(a.mods().size()).isZero();
        });
    }

    /** 58 of room are 3 more than needed, which is close; with memory of 32 it is 1, which is tight. */
    @Test
    void verdictsChange() {
        Flips flips = flips(roof(58), roof(58).with(SmallParts.memory("memory", mm(32))));
        assertThat(flips.verdicts()).hasSize(4).allSatisfy(c -> {
            assertThat(c.was().tightest().verdict()).isEqualTo(Verdict.CLOSE);
            assertThat(c.was().tightest().marginHmm()).isEqualTo(hmm(3));
            assertThat(c.is().tightest().verdict()).isEqualTo(Verdict.TIGHT);
            assertThat(c.is().tightest().marginHmm()).isEqualTo(hmm(1));
            assertThat(c.was().layout().key()).isEqualTo(c.is().layout().key());
            assertThat(c.needsOtherMods()).isFalse();
        });
        assertThat(flips.died()).isEmpty();
        assertThat(flips.alive()).isEmpty();
    }

    @Test
    void nothingFlipsWhereNothingChanges() {
        Flips flips = flips(roof(58), roof(58));
        assertThat(flips.isNothing()).isTrue();
        assertThat(flips.same()).isEqualTo(4);
    }

    /** Two radiators of 30 are one shape; of 33 one of them dies in 56 of room, and the other stays what it was. */
    @Test
    void ofRadiatorsThatWereAlikeEachHasItsOwnFate() {
        Flips flips = flips(roof(56), roof(56).with(SmallParts.radiator("r-a", "2x120", mm(33))));
        assertThat(flips.died()).hasSize(4).allSatisfy(d -> {
            assertThat(d.only()).containsExactly(new Flips.Hung("roof", List.of("r-a")));
            assertThat(d.clash().gap().orElseThrow().marginHmm()).isEqualTo(hmm(-2));
        });
        assertThat(flips.same()).isEqualTo(4);
        assertThat(flips.verdicts()).isEmpty();
        assertThat(flips.alive()).isEmpty();
    }

    /** Both radiators 2 thicker: other keys, the same layouts. In 58 of room 3 become 1. */
    @Test
    void layoutsAreMatchedByTheirPartsNotByTheirKeys() {
        Flips flips = flips(
                roof(58),
                roof(58).with(SmallParts.radiator("r-a", "2x120", mm(32)))
                        .with(SmallParts.radiator("r-b", "2x120", mm(32))));
        assertThat(flips.died()).isEmpty();
        assertThat(flips.alive()).isEmpty();
        assertThat(flips.verdicts()).hasSize(4).allSatisfy(c -> {
            assertThat(c.was().layout().key()).isNotEqualTo(c.is().layout().key());
            assertThat(c.only()).isEmpty();
            assertThat(c.is().tightest().marginHmm()).isEqualTo(hmm(1));
        });
    }

    /** Memory that nobody has measured makes everything unknown; once it is known, four layouts fit. */
    @Test
    void whatWasUnknownBecomesKnown() {
        SmallCase open = roof(58).with(SmallParts.memory("memory", Dimension.UNKNOWN));
        Flips flips = flips(open, roof(58));
        assertThat(flips.doubts()).filteredOn(d -> d.is() == Flips.State.FITS).hasSize(4);
        assertThat(flips.doubts()).allSatisfy(d -> {
            assertThat(d.was()).isEqualTo(Flips.State.UNKNOWN);
            assertThat(d.measure()).isNotEmpty();
        });
        assertThat(flips.alive()).isEmpty();
        assertThat(flips(roof(58), open).doubts())
                .filteredOn(d -> d.was() == Flips.State.FITS && d.is() == Flips.State.UNKNOWN)
                .hasSize(4);
    }

    @Test
    void whatWasStoppedSaysSo() {
        Flips flips =
                FlipSearch.flips(roof(58).fitCase(), roof(56).fitCase(), () -> java.util.Optional.of("interrupted"));
        assertThat(flips.incompleteBecause()).contains("interrupted");
        assertThat(flips.isNothing()).isTrue();
    }
}

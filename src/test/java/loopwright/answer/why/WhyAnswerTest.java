package loopwright.answer.why;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.coverOverRings;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.answer.Halt;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Pattern;
import loopwright.fit.Wish;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** Common practice, no source: a roof with 52 mm to the memory, a stack of 55, and a cover that frees 25. */
class WhyAnswerTest {

    private static final double MEMORY_MM = 30;
    private static final Spot SPOT = new Spot(250, 100);

    private static final Wish ROOF = new Wish.RadiatorAt(
            "roof=2x120/30",
            List.of("roof"),
            new Wish.Pick(Optional.of(new Pattern(2, 120)), Optional.of(3000), Optional.empty()));

    private static SmallCase roof(double depthToMemoryMm) {
        return new SmallCase(400, SmallCase.BOARD_TOP_MM + MEMORY_MM + depthToMemoryMm)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", SPOT)))
                .with(SmallParts.memory("memory", mm(MEMORY_MM)))
                .with(SmallParts.radiator("radiator", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)));
    }

    private static SmallCase withCover(SmallCase roof) {
        return roof.with(SmallParts.cover("cover", "2x120", 30, 0.6))
                .with(coverOverRings("raise", "roof", "cover", SPOT));
    }

    private static WhyAnswer why(SmallCase question, Wish... wishes) {
        return new WhyAnswer(question.fitCase(), new Wishes(List.of(wishes), List.of()), Halt.NEVER);
    }

    @Test
    void aStackOfFiftyFiveInFiftyTwoIsThreeShort() {
        WhyAnswer answer = why(roof(52), ROOF);

        assertThat(answer.had()).isEmpty();
        assertThat(answer.conflicts()).hasSize(1);
        List<Stated> facts = answer.conflicts().get(0).facts();
        assertThat(facts.stream().map(Stated::id)).containsExactly("wish:roof=2x120/30", "clear:memory:stack:roof");
        assertThat(facts.get(1).sentence())
                .matches(
                        "roof (radiator needs|fans need) 55 mm inwards, 52 mm are there to memory \\(memory\\): 3 mm short");
        assertThat(facts.get(1).lack()).contains(new Stated.Lack(3, "mm"));
    }

    @Test
    void theWaysOutAreMoreRoomOrALowerMemory() {
        List<WayOut> ways = why(roof(52), ROOF).waysOut();

        assertThat(ways).hasSize(2);
        assertThat(ways.get(0).changes().get(0).sentence()).isEqualTo("give up roof=2x120/30");
        assertThat(ways.get(1).changes().get(0).sentence())
                .matches("make 3 mm more room between roof (radiator|fans) and memory \\(memory\\)");
        assertThat(ways.get(1).instead().get(0).sentence()).isEqualTo("or a memory at most 27 mm high; memory has 30");
    }

    @Test
    void aHundredthDecides() {
        assertThat(why(roof(54.99), ROOF).had()).isEmpty();
        assertThat(why(roof(54.99), ROOF).conflicts().get(0).facts().get(1).lack())
                .contains(new Stated.Lack(0.01, "mm"));
        assertThat(why(roof(55), ROOF).had()).isPresent();
    }

    @Test
    void withoutTheCoverTwoWishesMeet() {
        SmallCase question = withCover(roof(52));
        Wish plain = new Wish.ModNotDone("without=raise", "raise");

        assertThat(why(question, ROOF).had().orElseThrow().mods().size()).isEqualTo(1);
        WhyAnswer answer = why(question, ROOF, plain);
        assertThat(answer.conflicts().get(0).facts().stream().map(Stated::id))
                .containsExactly("wish:roof=2x120/30", "wish:without=raise", "clear:memory:stack:roof");
        assertThat(answer.waysOut().stream()
                        .filter(w -> w.kind() == WayOut.Kind.WISHES)
                        .map(w -> w.changes().get(0).sentence()))
                .containsExactlyInAnyOrder("give up roof=2x120/30", "give up without=raise");
    }

    @Test
    void whatWasStoppedHasNoConflictsYet() {
        WhyAnswer answer = new WhyAnswer(
                roof(52).fitCase(), new Wishes(List.of(ROOF), List.of()), () -> Optional.of("interrupted"));

        assertThat(answer.incompleteBecause()).contains("interrupted");
        assertThat(answer.conflicts()).isEmpty();
    }

    @Test
    void contradictingWishesOfOneMountAreAConflict() {
        WhyAnswer answer = why(roof(60), ROOF, new Wish.NothingAt("roof=nothing", "roof"));

        assertThat(answer.conflicts()).hasSize(1);
        assertThat(answer.conflicts().get(0).facts().stream().map(Stated::sentence))
                .containsExactly(
                        "you want a 2x120 radiator 30 mm thick at the roof", "you want no radiator at the roof");
    }
}

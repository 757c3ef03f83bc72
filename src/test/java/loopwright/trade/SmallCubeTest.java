package loopwright.trade;

import static loopwright.testing.Mm.box;
import static loopwright.testing.Mm.mm;
import static loopwright.testing.Mm.span;
import static loopwright.testing.Mm.upright;
import static loopwright.testing.SmallMods.bracket;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static loopwright.testing.SmallMods.takeOut;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.chassis.Place;
import loopwright.fit.Arrangement;
import loopwright.fit.FitWish;
import loopwright.fit.FoundLayout;
import loopwright.testing.Answers;
import loopwright.testing.Answers.Wish;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** Common practice, no source: what has to come out of a small cube before its front takes a radiator. */
class SmallCubeTest {

    private static final String BAY = "bay-out";
    private static final String CAGE = "cage-out";

    /** Front of 2x120, upright; the bay fills its first 50 mm, the drive cage stands from 60 to 160 behind it. */
    private static SmallCase cube() {
        return new SmallCase(400, 320)
                .mount(Face.FRONT, mount("front", Axis.Z, seat("2x120", new Spot(150, 100))))
                .with(SmallParts.radiator("thin", "2x120", mm(30)))
                .with(SmallParts.radiator("thick", "2x120", mm(45)))
                .with(SmallParts.fan("fan", 120, mm(25)))
                .removable("bay", box(span(40, 160), span(0, 50), span(200, 250)))
                .removable("cage", box(span(40, 160), span(60, 160), span(20, 120)))
                .with(takeOut(BAY, "bay"))
                .with(takeOut(CAGE, "cage"));
    }

    private static int depthHmm(FoundLayout found) {
        var shape = found.layout().stacks().get(0).shape();
        return shape.thicknessHmm()
                + shape.arrangement().fanLayers() * shape.fanThickness().valueHmm();
    }

    @Test
    void aDoubleRadiatorNeedsTheFrontBayOut() {
        Answers answers = new Answers(cube());

        assertThat(answers.needed(answers.of(new Wish("2x120", 30, Arrangement.PUSH))))
                .containsExactly("[bay-out]");
        assertThat(answers.needed(answers.of(new Wish("2x120", 30, Arrangement.PULL))))
                .containsExactly("[bay-out]");
    }

    @Test
    void aThickerStackNeedsTheDriveCageOutToo() {
        Answers answers = new Answers(cube());

        assertThat(answers.needed(answers.of(new Wish("2x120", 45, Arrangement.PUSH))))
                .containsExactly("[bay-out, cage-out]");
        assertThat(answers.needed(answers.of(new Wish("2x120", 30, Arrangement.PUSH_PULL))))
                .containsExactly("[bay-out, cage-out]");
    }

    /** Whatever the stack: up to the cage's face the bay is enough, past it both come out; nothing fits as delivered. */
    @Test
    void depthAloneDecides() {
        Answers answers = new Answers(cube());

        assertThat(answers.all())
                .hasSize(2 * 3 * 2)
                .allSatisfy(found -> assertThat(answers.needed(List.of(found)))
                        .containsExactly(depthHmm(found) <= 6000 ? "[bay-out]" : "[bay-out, cage-out]"));
    }

    /** A cage that comes out takes its drive places along: with a drive wanted and no place left, thick stacks are lost. */
    @Test
    void takingTheCageOutCostsItsDrivePlace() {
        SmallCase cube = cube().with(SmallParts.drive("drive"))
                .drives("drive")
                .place("cage-place", Place.Holds.D2_5, upright(50, 65, 30), Optional.of("cage"));
        Answers answers = new Answers(cube);

        assertThat(answers.needed(answers.all())).containsExactly("[bay-out]");
        assertThat(answers.all())
                .allSatisfy(found -> assertThat(depthHmm(found)).isLessThanOrEqualTo(6000));
    }

    /** More mods are not always more room: a bracket built in where the radiator hangs makes the larger set clash. */
    @Test
    void aLargerSetMayNotFit() {
        SmallCase cube = cube().with(bracket("shelf-in", box(span(40, 160), span(50, 60), span(150, 160))));
        Answers answers = new Answers(cube);
        Wish thin = new Wish("2x120", 30, Arrangement.PUSH);

        assertThat(answers.needed(answers.of(thin))).containsExactly("[bay-out]");
        assertThat(cube.search(with(BAY)).run().fits()).isNotEmpty();
        assertThat(cube.search(with(BAY, "shelf-in")).run().fits()).isEmpty();
        assertThat(cube.search(with(BAY, CAGE, "shelf-in")).run().fits()).isEmpty();
    }

    private static FitWish with(String... mods) {
        return new FitWish(List.of(mods), List.of(), OptionalInt.empty(), OptionalLong.empty());
    }
}

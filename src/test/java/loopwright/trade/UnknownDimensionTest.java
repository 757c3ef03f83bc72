package loopwright.trade;

import static loopwright.testing.Mm.mm;
import static loopwright.testing.SmallMods.mount;
import static loopwright.testing.SmallMods.seat;
import static org.assertj.core.api.Assertions.assertThat;

import loopwright.catalog.basis.Axis;
import loopwright.catalog.basis.Face;
import loopwright.catalog.part.Part;
import loopwright.fit.FitResult;
import loopwright.quantity.Dimension;
import loopwright.testing.SmallCase;
import loopwright.testing.SmallMods.Spot;
import loopwright.testing.SmallParts;
import org.junit.jupiter.api.Test;

/** Common practice, no source: what nobody has measured never fits; it is listed apart, and says what to measure. */
class UnknownDimensionTest {

    private static SmallCase roof() {
        return new SmallCase(400, 200)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", new Spot(250, 100))))
                .with(SmallParts.radiator("radiator", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)));
    }

    @Test
    void withEverythingKnownItFits() {
        assertThat(roof().fits().fits()).isNotEmpty();
        assertThat(roof().fits().unknown()).isEmpty();
    }

    @Test
    void memoryWithoutAHeight() {
        isUnknown(SmallParts.memory("memory", Dimension.UNKNOWN), "memory.height_mm");
    }

    @Test
    void aCardWithoutALength() {
        isUnknown(SmallParts.card("card", Dimension.UNKNOWN, 150), "card.body.length_mm");
    }

    @Test
    void aRadiatorWithoutAThickness() {
        isUnknown(SmallParts.radiator("radiator", "2x120", Dimension.UNKNOWN), "roof:radiator.body.thickness_mm");
    }

    @Test
    void aFanWithoutAThickness() {
        isUnknown(SmallParts.fan("fan", 120, Dimension.UNKNOWN), "roof:fans.frame.thickness_mm");
    }

    private static void isUnknown(Part part, String dimension) {
        FitResult result = roof().with(part).fits();

        assertThat(result.fits()).isEmpty();
        assertThat(result.unknown())
                .isNotEmpty()
                .allSatisfy(u -> assertThat(u.measure()).containsExactly(dimension));
    }

    /** With another kit that is known, the layout fits with that one, and is not unknown any more. */
    @Test
    void aKnownPartBesideItIsEnough() {
        FitResult result = roof().with(SmallParts.memory("memory", Dimension.UNKNOWN))
                .with(SmallParts.memory("memory-known", mm(30)))
                .fits();

        assertThat(result.fits()).isNotEmpty();
        assertThat(result.unknown()).isEmpty();
    }

    /** What would clash even at nothing is neither a fit nor unknown. */
    @Test
    void whatClashesAnywayIsNotWorthMeasuring() {
        SmallCase low = new SmallCase(400, SmallCase.BOARD_TOP_MM + 29)
                .mount(Face.ROOF, mount("roof", Axis.Y, seat("2x120", new Spot(250, 100))))
                .with(SmallParts.radiator("radiator", "2x120", mm(30)))
                .with(SmallParts.fan("fan", 120, mm(25)))
                .with(SmallParts.memory("memory", Dimension.UNKNOWN));

        assertThat(low.fits().fits()).isEmpty();
        assertThat(low.fits().unknown()).isEmpty();
    }
}

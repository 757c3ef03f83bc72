package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;
import org.junit.jupiter.api.Test;

/** Cuts for the air of a mount: how large they may get, and that corners are drilled first. */
class CutHolesTest {

    private static PanelTemplate front(String mod, String pattern, int alongHmm) {
        return Templates.of(
                        Demo.setting("mid-tower", Set.of(mod), List.of(Demo.hung("front", pattern, alongHmm, 10_000))))
                .panels()
                .get(0);
    }

    /**
     * By hand: screws of a 120 fan are 105 apart (industry drawing), M3 clear is 3.4 (ISO 273 medium), the sheet 0.8: 105
     * less 3.4 less four sheets of 0.8 is 98.4; two rings of 116 reach 120 + 116.
     */
    @Test
    void aFullCutWithoutAnotherSeatStaysBetweenTheScrews() {
        PanelTemplate front = front("front-mesh", "2x120", 25_000);
        Hole window = front.holes().get(0);
        assertThat(window.reach().widthHmm()).isEqualTo(9840);
        assertThat(window.reach().heightHmm()).isEqualTo(23_600);
        assertThat(front.existing()).hasSize(8);
        assertThat(front.existing())
                .allSatisfy(screw -> assertThat(Metal.between(window, screw)).isGreaterThanOrEqualTo(160));
        assertThat(front.isRefused()).isFalse();
        assertThat(front.findings())
                .anyMatch(f -> f.severity() == Finding.Severity.NOTE
                        && f.text().contains("stays between the screw rows, 98.4 wide"));
    }

    /** The flat is 12 to 202: from the middle at 100, 98.4 wide, that leaves 38.8 and 52.8 at the sides. */
    @Test
    void aFullCutKeepsItsRim() {
        assertThat(front("front-mesh", "2x120", 25_000).findings())
                .noneMatch(f -> f.text().contains("of rim"));
        // 146 is as low as the seat goes: 146 - 118 - 8 is 20.
        assertThat(front("front-mesh", "2x120", 14_600).findings())
                .noneMatch(f -> f.text().contains("of rim"));
    }

    /** A ring of 134 that a mod names is for a 140 fan; a 120 fan's frame would stand in it: 116. */
    @Test
    void aRingIsNoLargerThanTheFansOwn() {
        PanelTemplate left = Templates.of(Demo.setting(
                        "slim", Set.of("left-pattern-140"), List.of(Demo.hung("left", "1x120", 20_000, 15_000))))
                .panels()
                .get(0);
        assertThat(left.holes()).singleElement().matches(h -> h.reach().widthHmm() == 11_600);
        assertThat(left.findings())
                .anyMatch(f -> f.severity() == Finding.Severity.NOTE && f.text().contains("leave them undrilled"));
    }

    /** Corners of radius 4 are drilled with 8, tangent to both edges. */
    @Test
    void cornersAreDrilledFirst() {
        PanelTemplate front = front("front-open", "2x120", 25_000);
        Hole.Window strip = (Hole.Window) front.holes().get(0);
        assertThat(strip.cornerHmm()).isEqualTo(400);
        List<Mark.Circle> drilled = front.leaf().drawing().marks().stream()
                .filter(m -> m.layer() == Layer.DRILL && m instanceof Mark.Circle)
                .map(Mark.Circle.class::cast)
                .toList();
        assertThat(drilled).hasSize(4).allMatch(c -> c.diameterHmm() == 800);
        assertThat(drilled)
                .extracting(Mark.Circle::centre)
                .allMatch(c ->
                        Math.min(c.xHmm() - strip.area().leftHmm(), strip.area().rightHmm() - c.xHmm()) == 400)
                .allMatch(c -> Math.min(
                                c.yHmm() - strip.area().bottomHmm(),
                                strip.area().topHmm() - c.yHmm())
                        == 400);
        assertThat(front.leaf().drawing().marks())
                .anyMatch(m ->
                        m instanceof Mark.Text text && text.text().equals("4 x \u00d88.0: drill the corners first"));
    }

    /** Folds and clips stand hatched on the sheet of a cut beside them. */
    @Test
    void keepOutsAreOnTheSheet() {
        PanelTemplate front =
                Templates.of(Demo.alone("short-tower", "front-open")).panels().get(0);
        assertThat(front.leaf().drawing().marks())
                .filteredOn(m -> m.layer() == Layer.KEEP_OUT && m instanceof Mark.Rounded)
                .as("two folds, two rows of clips")
                .hasSize(4);
        assertThat(front.leaf().drawing().marks())
                .filteredOn(Mark.Text.class::isInstance)
                .extracting(m -> ((Mark.Text) m).text())
                .contains("front-left-fold", "front-right-fold", "trim-clips-left", "trim-clips-right");
    }
}

package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import loopwright.catalog.basis.Face;
import loopwright.catalog.basis.Span;
import loopwright.catalog.chassis.Panel;
import loopwright.quantity.Dimension;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Dot;
import org.junit.jupiter.api.Test;

/** A steel roof of 0.8 mm, flat from 10 to 190 and from 10 to 290, with a fold at its left, a slot and a clip. */
class WebCheckTest {

    private static final Setting SETTING = Demo.alone("short-tower", "longer-feet");

    private static final Panel PANEL = new Panel(
            "roof",
            Face.ROOF,
            Dimension.ofHmm(80),
            Panel.Material.STEEL,
            patch(1000, 19_000, 1000, 29_000),
            new Panel.Features(
                    List.of(new Panel.Feature("slot", patch(3000, 3500, 3000, 9000))),
                    List.of(),
                    List.of(new Panel.Feature("fold", patch(0, 500, 0, 30_000))),
                    List.of(new Panel.Feature("clip", patch(17_000, 18_000, 20_000, 21_000)))));

    private static final WebCheck CHECK = new WebCheck(SETTING, PanelView.outside(SETTING.chassis(), PANEL));

    private static Panel.Patch patch(int x0, int x1, int y0, int y1) {
        return new Panel.Patch(
                Optional.of(new Span(Dimension.ofHmm(x0), Dimension.ofHmm(x1))),
                Optional.of(new Span(Dimension.ofHmm(y0), Dimension.ofHmm(y1))),
                Optional.empty());
    }

    private static Hole.Tag tag(Hole.Purpose purpose) {
        return new Hole.Tag("N", purpose, "mod", "test");
    }

    private static Hole screw(int x, int y) {
        return new Hole.Round(tag(Hole.Purpose.SCREW), new Dot(x, y), 400);
    }

    private static Hole ring(int x, int y, int diameter) {
        return new Hole.Round(tag(Hole.Purpose.RING), new Dot(x, y), diameter);
    }

    private static List<Finding.Severity> of(Hole... holes) {
        return CHECK.of(List.of(holes), List.of()).stream()
                .map(Finding::severity)
                .toList();
    }

    /** Edge of the flat at 10.00: hole of 4.00. One sheet is 0.80, two are 1.60. */
    @Test
    void asksForOneSheetToTheEdgeAndBetterTwo() {
        assertThat(of(screw(1000 + 200 + 79, 15_000))).containsExactly(Finding.Severity.REFUSED);
        assertThat(of(screw(1000 + 200 + 80, 15_000))).containsExactly(Finding.Severity.WARNING);
        assertThat(of(screw(1000 + 200 + 159, 15_000))).containsExactly(Finding.Severity.WARNING);
        assertThat(of(screw(1000 + 200 + 160, 15_000))).isEmpty();
    }

    @Test
    void asksForTheSameBetweenHoles() {
        assertThat(of(screw(8000, 15_000), screw(8400 + 79, 15_000))).containsExactly(Finding.Severity.REFUSED);
        assertThat(of(screw(8000, 15_000), screw(8400 + 80, 15_000))).containsExactly(Finding.Severity.WARNING);
        assertThat(of(screw(8000, 15_000), screw(8400 + 159, 15_000))).containsExactly(Finding.Severity.WARNING);
        assertThat(of(screw(8000, 15_000), screw(8400 + 160, 15_000))).isEmpty();
    }

    @Test
    void keepsSixBetweenRings() {
        assertThat(of(ring(10_000, 8000, 8000), ring(10_000, 16_000 + 599, 8000)))
                .containsExactly(Finding.Severity.REFUSED);
        assertThat(of(ring(10_000, 8000, 8000), ring(10_000, 16_000 + 600, 8000)))
                .isEmpty();
    }

    /** To the edge of the flat at 10.00: less than 8 warns, less than 10 is noted. */
    @Test
    void keepsARim() {
        assertThat(of(ring(1000 + 799 + 4000, 15_000, 8000))).contains(Finding.Severity.WARNING);
        assertThat(of(ring(1000 + 800 + 4000, 15_000, 8000))).containsExactly(Finding.Severity.NOTE);
        assertThat(of(ring(1000 + 999 + 4000, 15_000, 8000))).containsExactly(Finding.Severity.NOTE);
        assertThat(of(ring(1000 + 1000 + 4000, 15_000, 8000))).isEmpty();
    }

    @Test
    void refusesHalfASlotAndAClip() {
        assertThat(of(screw(3500 + 199, 5000))).containsExactly(Finding.Severity.REFUSED);
        assertThat(of(screw(3500 + 200, 5000))).isEmpty();
        assertThat(of(screw(3250, 5000))).as("whole within the slot").isEmpty();
        assertThat(of(screw(17_000 - 199, 20_500))).containsExactly(Finding.Severity.REFUSED);
        assertThat(of(screw(17_000 - 200, 20_500))).isEmpty();
    }

    /** The window's corner is round: a screw near it has more metal than to the sharp corner. */
    @Test
    void measuresToRoundCorners() {
        Hole window = new Hole.Window(tag(Hole.Purpose.WINDOW), new Area(6000, 6000, 14_000, 14_000), 400);
        // Corner's middle at 136, 136; from there 4.00 to the edge; screw of 2.00 radius at 45 degrees.
        Hole screw = screw(13_600 + 500, 13_600 + 500);
        assertThat(Metal.between(window, screw)).isEqualTo(Math.sqrt(2) * 500 - 400 - 200);
        assertThat(Metal.between(screw, window)).isEqualTo(Metal.between(window, screw));
        assertThat(Metal.between(window, screw(14_600, 10_000))).isEqualTo(400);
    }

    /** Flat 180 × 280 = 50 400 mm²; 65 % are 32 760: 126 × 260 just keeps 35 %. */
    @Test
    void keepsAThirdOfThePanel() {
        Hole most = new Hole.Window(tag(Hole.Purpose.WINDOW), new Area(4000, 2000, 16_600, 28_000), 0);
        Hole more = new Hole.Window(tag(Hole.Purpose.WINDOW), new Area(4000, 2000, 16_650, 28_000), 0);
        assertThat(CHECK.of(List.of(most), List.of())).noneMatch(f -> f.text().contains("% of the flat"));
        assertThat(CHECK.of(List.of(more), List.of())).anyMatch(f -> f.text().contains("% of the flat"));
    }
}

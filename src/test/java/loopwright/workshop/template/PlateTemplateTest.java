package loopwright.workshop.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import loopwright.workshop.drawing.Area;
import loopwright.workshop.drawing.Layer;
import loopwright.workshop.drawing.Mark;
import org.junit.jupiter.api.Test;

/** The board's tray gets a sheet of its own, with what must not be cut. */
class PlateTemplateTest {

    private static final Templates WHITE = Templates.of(Demo.alone("short-tower-white", "tray-top-hole"));

    /**
     * By hand, from the catalogue: the tray is 256 deep and 280 high, from 100 and 150; the hole of 32 x 22 has its
     * middle at 320, 412. Seen from the left the front is at the right, so 220 from the front fold and 18 below the top.
     */
    @Test
    void drawsTheHoleOfTheTray() {
        assertThat(WHITE.notes()).isEmpty();
        PanelTemplate tray = WHITE.panels().get(0);
        assertThat(tray.id()).isEqualTo("tray");
        assertThat(tray.view().words()).contains("LEFT");
        assertThat(tray.view().flat().widthHmm()).isEqualTo(25_600);
        assertThat(tray.view().flat().heightHmm()).isEqualTo(28_000);
        Area hole = tray.holes().get(0).reach();
        assertThat(hole).isEqualTo(new Area(-33_600, 40_100, -30_400, 42_300));
        assertThat(tray.view().flat().rightHmm() - hole.centre().xHmm()).isEqualTo(22_000);
        assertThat(tray.view().flat().topHmm() - hole.centre().yHmm()).isEqualTo(1800);
        assertThat(tray.isRefused()).isFalse();
    }

    /**
     * Micro-ATX hole F lies 6.35 down and 33.02 from the rear edge (microATX Motherboard Interface Specification 1.2,
     * secondary copy): from the board's corner at 356, 394 that is 322.98, 387.65.
     */
    @Test
    void keepsClearOfStandoffsAndOfTheFold() {
        List<Area> keptOut = WHITE.panels().get(0).leaf().drawing().marks().stream()
                .filter(m -> m.layer() == Layer.KEEP_OUT && m instanceof Mark.Rounded)
                .map(m -> ((Mark.Rounded) m).area())
                .toList();
        assertThat(keptOut)
                .as("pad of 10 x 10 round hole F")
                .contains(new Area(-32_298 - 500, 38_765 - 500, -32_298 + 500, 38_765 + 500));
        assertThat(keptOut)
                .as("the fold along the tray's front edge")
                .anyMatch(a -> a.leftHmm() == -10_000 && a.heightHmm() == 28_000);
    }

    @Test
    void refusesAHoleInAStandoff() {
        PanelTemplate tray = WHITE.panels().get(0);
        Setting setting = Demo.setting("short-tower-white", Set.of("tray-top-hole"), List.of());
        List<Plan.Patch> pads = new Standoffs(setting, tray.view()).pads(18_600);
        assertThat(pads).extracting(Plan.Patch::name).contains("b", "c", "f", "h", "j", "l", "m");
        FindingGroups groups = new FindingGroups();
        Hole.Tag tag = new Hole.Tag("K1", Hole.Purpose.CABLE, "mod", "test");
        Area pad = pads.get(0).area();
        Standoffs.check(groups, new Hole.Round(tag, pad.centre().plus(0, 500 + 499), 1000), pads);
        assertThat(groups.findings())
                .singleElement()
                .matches(f ->
                        f.severity() == Finding.Severity.REFUSED && f.text().contains("standoff b"));
        FindingGroups free = new FindingGroups();
        Standoffs.check(free, new Hole.Round(tag, pad.centre().plus(0, 500 + 500), 1000), pads);
        assertThat(free.findings()).isEmpty();
    }
}

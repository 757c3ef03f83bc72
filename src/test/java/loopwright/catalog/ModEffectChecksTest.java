package loopwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checks of what a mod does: the metal that a cut leaves, and that a kind does what it is named for. */
class ModEffectChecksTest {

    private static final String CUBE = "catalogs/chassis/cube.yaml";

    /** 6 mm between the rings of two 140 fans: 134 passes, 134.01 does not; common practice, no source. */
    @Test
    void ringsLeaveAWeb(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "cut_mm: 130", "cut_mm: 134"))
                .isEmpty();
    }

    @Test
    void ringsThatLeaveTooLittleAreRefused(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "cut_mm: 130", "cut_mm: 134.01"))
                .containsExactly(CUBE + ":89:49: chassis \"cube\": mods[1].effect.airways[0].cut_mm: found 134.01 mm,"
                        + " allowed at most 134.0 mm, so that the screws keep their metal");
    }

    /** Between the screw rows of a 140 fan: 124.5 less a 4.5 hole less one sheet thickness at each edge. */
    @Test
    void aStripLeavesTheScrewsTheirMetal(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "cut: rings, cut_mm: 130", "cut: strip, cut_mm: 120"))
                .hasSize(1)
                .allMatch(p -> p.contains("airways[0].cut_mm: found 120.0 mm, allowed at most 118."));
    }

    @Test
    void aKindDoesWhatItSays(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "kind: take-out", "kind: drill-pattern"))
                .containsExactly(CUBE + ":71:11: chassis \"cube\": mods[0].effect: found an effect without a seat,"
                        + " allowed what the kind of mod says. Or give the mod another kind.");
    }

    @Test
    void theInsideIsMeasured(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "height_mm: 300", "height_mm: unknown"))
                .anyMatch(
                        p -> p.contains("shell.interior.height_mm: found unknown, allowed a length. Measure the inside"
                                + " first: everything else is judged against it."));
    }
}

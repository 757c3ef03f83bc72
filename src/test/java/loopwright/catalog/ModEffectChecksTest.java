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

    /**
     * By hand: two rings of 130 at 140 pitch reach 70 + 65 from their middle; from 180 that is 315, and the sheet is 1
     * thick: a flat that ends at 316 passes, one at 315.99 does not.
     */
    @Test
    void aCutStaysOnTheFlatWhereverSeatsLetItGo(@TempDir Path folder) {
        String flat = "flat: {x_mm: [10, 240], y_mm: [10, 340]}";
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, flat, "flat: {x_mm: [10, 240], y_mm: [10, 316]}"))
                .noneMatch(p -> p.contains("a cut that comes"));
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, flat, "flat: {x_mm: [10, 240], y_mm: [10, 315.99]}"))
                .filteredOn(p -> p.contains("a cut that comes"))
                .containsExactly(CUBE + ":89:16: chassis \"cube\": mods[1].effect.airways[0]: found a cut that comes"
                        + " within 0.99 mm of the edge of the flat of panel \"roof\", allowed at least one sheet"
                        + " thickness, 1.0 mm, wherever 2x140 goes (mounts[0].seats[0]). Make the cut or the range of"
                        + " the seat narrower.");
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

    @Test
    void aModDoesNotExcludeItself(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(
                        folder, CUBE, "{requires: [take-cage]}", "{requires: [take-cage], excludes: [raise-roof]}"))
                .singleElement()
                .asString()
                .contains("mods[1].rules.excludes: found \"raise-roof\" itself, allowed other mods."
                        + " As it stands the mod could never be done.");
    }

    @Test
    void placesAreFewEnoughToTellApart(@TempDir Path folder) {
        StringBuilder more = new StringBuilder("places:\n");
        for (int i = 0; i < 62; i++) {
            more.append("        - {id: spare-")
                    .append(i)
                    .append(", title: Spare, holds: [3.5-inch], pose: {corner: {x_mm: 1, y_mm: 1, z_mm: 1},")
                    .append(" length: rear, width: right, height: up}}\n");
        }
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "places:\n", more.toString()))
                .anyMatch(p -> p.matches(".*: inside\\.places: found \\d+ places, allowed at most 62 a chassis"));
    }

    /** A line break and an escape sequence in a title could forge a line of the answer. */
    @Test
    void textsHoldOnlyWhatCanBeSeen(@TempDir Path folder) {
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "title: Take out the cage", "title: \"Take\\nFIT\""))
                .singleElement()
                .asString()
                .contains("found the character U+000A, allowed one line of characters that can be seen");
        assertThat(CheckAcrossItemsTest.broken(folder, CUBE, "title: Take out the cage", "title: \"a\\eb\""))
                .singleElement()
                .asString()
                .contains("found the character U+001B");
    }
}
